package simmerpoint.sun;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.function.ToDoubleBiFunction;

/**
 * Linke turbidity through the year: the number of clean, dry atmospheres with the same attenuation as the real air with its
 * water and haze; 2 is very clear, 3 usual, 5 hazy. Refers to air mass 2.
 *
 * <p>Usual air of a place comes from stations around it. The other kinds of {@link AirType} come from a table of monthly
 * means for mild climates of the northern hemisphere. Our choices, not the table's: a value stands at the middle of its month
 * with a smooth curve between; south of the equator the year is shifted by six months. A single day may differ by a unit from
 * its monthly mean.
 */
public final class LinkeTurbidity {
    /** Below the cleanest air (1), as a margin for errors of a measured beam. */
    public static final double SMALLEST = 0.5;

    /** Above any haze in which a solar cooker is of use. */
    public static final double LARGEST = 20;

    private static final double CLEAN = 1;
    private static final String TABLE = "linke-turbidity.tsv";
    private static final int MONTHS = 12;
    private static final int HALF_YEAR = 6;

    private final String words;
    private final ToDoubleBiFunction<LocalDate, Site> turbidity;

    private LinkeTurbidity(String words, ToDoubleBiFunction<LocalDate, Site> turbidity) {
        this.words = words;
        this.turbidity = turbidity;
    }

    private LinkeTurbidity(String words, double[] northern) {
        this(words, year(northern));
    }

    private static ToDoubleBiFunction<LocalDate, Site> year(double[] northern) {
        YearlyCurve north = YearlyCurve.throughMidMonths(northern);
        YearlyCurve south = YearlyCurve.throughMidMonths(shifted(northern));
        return (date, site) -> (site.southern() ? south : north).on(date);
    }

    /** The year of an air type. */
    public static LinkeTurbidity of(AirType type) {
        if (type == AirType.LOCAL) {
            return new LinkeTurbidity("usual Linke turbidity of the place and the month", TurbidityStations::usual);
        }
        String words = "monthly Linke turbidity of " + type.word() + " air";
        return new LinkeTurbidity(words, MonthlyTable.read(TABLE).values(type.word()));
    }

    /** The same turbidity all year, {@link #SMALLEST} to {@link #LARGEST}. */
    public static LinkeTurbidity constant(double value) {
        if (!(value >= SMALLEST && value <= LARGEST)) {
            throw new IllegalArgumentException("turbidity " + value + " is outside " + SMALLEST + " to " + LARGEST);
        }
        double[] year = new double[MONTHS];
        Arrays.fill(year, value);
        return new LinkeTurbidity("Linke turbidity " + Math.round(10 * value) / 10.0, year);
    }

    /** Source of the values for an air type. */
    public static String source(AirType type) {
        return type == AirType.LOCAL
                ? TurbidityStations.source()
                : MonthlyTable.read(TABLE).source(type.word());
    }

    /** Turbidity on {@code date} at {@code site}, above 0. */
    public double on(LocalDate date, Site site) {
        return turbidity.applyAsDouble(date, site);
    }

    /** Air that is hazier by {@code more}, or clearer if that is below 0, but never clearer than clean dry air (1). */
    LinkeTurbidity plus(double more) {
        return new LinkeTurbidity(words, (date, site) -> Math.max(CLEAN, on(date, site) + more));
    }

    /** Kind and value in a few words, for reports. */
    public String describe() {
        return words;
    }

    private static double[] shifted(double[] northern) {
        double[] southern = new double[MONTHS];
        for (int i = 0; i < MONTHS; i++) {
            southern[i] = northern[(i + HALF_YEAR) % MONTHS];
        }
        return southern;
    }
}
