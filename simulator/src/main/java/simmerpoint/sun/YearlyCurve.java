package simmerpoint.sun;

import java.time.LocalDate;
import java.time.Month;

/**
 * Periodic monotone cubic interpolation of twelve monthly values. Slopes by F. N. Fritsch and J. Butland, A method for
 * constructing local monotone piecewise cubic interpolants, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304: continuous with
 * continuous slope (at New Year too), and between two values within their range. Time is in days of a year of 365; a leap
 * year is scaled to it, with an error under half a day.
 */
final class YearlyCurve {
    private static final int MONTHS = 12;
    private static final double YEAR = 365;

    /** Days from New Year by month, ascending; the values and slopes per day there. */
    private final double[] days;

    private final double[] values;
    private final double[] slopes;

    private YearlyCurve(double[] days, double[] values) {
        if (values.length != MONTHS) {
            throw new IllegalArgumentException(values.length + " values are not one for each of 12 months");
        }
        this.days = days;
        this.values = values.clone();
        this.slopes = new double[MONTHS];
        for (int i = 0; i < MONTHS; i++) {
            slopes[i] = slope(i);
        }
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
        double wrapped = day - YEAR * Math.floor((day - days[0]) / YEAR);
        int i = MONTHS - 1;
        while (i > 0 && days[i] > wrapped) {
            i--;
        }
        double width = width(i);
        double t = (wrapped - days[i]) / width;
        double s = 1 - t;
        return values[i] * s * s * (1 + 2 * t)
                + values[next(i)] * t * t * (1 + 2 * s)
                + width * t * s * (slopes[i] * s - slopes[next(i)] * t);
    }

    private double slope(int i) {
        int before = (i + MONTHS - 1) % MONTHS;
        double left = secant(before);
        double right = secant(i);
        if (left * right <= 0) {
            return 0;
        }
        double leftWeight = 2 * width(i) + width(before);
        double rightWeight = width(i) + 2 * width(before);
        return (leftWeight + rightWeight) / (leftWeight / left + rightWeight / right);
    }

    private double secant(int i) {
        return (values[next(i)] - values[i]) / width(i);
    }

    private double width(int i) {
        double width = days[next(i)] - days[i];
        return width > 0 ? width : width + YEAR;
    }

    private static int next(int i) {
        return (i + 1) % MONTHS;
    }
}
