package simmerpoint.sun;

import java.time.LocalDate;
import java.time.Month;
import simmerpoint.sampling.MonotoneCubic;

/**
 * Periodic {@link MonotoneCubic} interpolation of twelve monthly values: continuous with continuous slope (at New Year
 * too), and between two values within their range. Time is in days of a year of 365; a leap year is scaled to it, with an
 * error under half a day.
 */
final class YearlyCurve {
    private static final int MONTHS = 12;
    private static final double YEAR = 365;

    /** Months beyond either end of the year, so that no slope within it is that of an end. */
    private static final int BEYOND = 2;

    private final double firstDay;
    private final MonotoneCubic curve;

    /** Days from New Year by month, ascending, and the values there. */
    private YearlyCurve(double[] days, double[] values) {
        if (values.length != MONTHS) {
            throw new IllegalArgumentException(values.length + " values are not one for each of 12 months");
        }
        firstDay = days[0];
        double[] x = new double[MONTHS + 2 * BEYOND];
        double[] y = new double[x.length];
        for (int k = 0; k < x.length; k++) {
            int month = Math.floorMod(k - BEYOND, MONTHS);
            x[k] = days[month] + YEAR * Math.floorDiv(k - BEYOND, MONTHS);
            y[k] = values[month];
        }
        curve = new MonotoneCubic(x, y);
    }

    /** Each value is for the middle of its month. */
    static YearlyCurve throughMidMonths(double... values) {
        return new YearlyCurve(knots(0.5, 0), values);
    }

    /** Each value is for noon of the {@code dayOfMonth}-th (1 to 28) of its month. */
    static YearlyCurve throughDay(int dayOfMonth, double... values) {
        return new YearlyCurve(knots(0, dayOfMonth - 0.5), values);
    }

    private static double[] knots(double shareOfMonth, double addedDays) {
        double[] days = new double[MONTHS];
        for (Month month : Month.values()) {
            double start = month.firstDayOfYear(false) - 1;
            days[month.getValue() - 1] = start + shareOfMonth * month.length(false) + addedDays;
        }
        return days;
    }

    /** Value at noon of {@code date}. */
    double on(LocalDate date) {
        return at((date.getDayOfYear() - 0.5) * YEAR / date.lengthOfYear());
    }

    /** Value {@code day} days (of 365) after New Year; any number, the curve repeats. */
    double at(double day) {
        return curve.at(day - YEAR * Math.floor((day - firstDay) / YEAR));
    }
}
