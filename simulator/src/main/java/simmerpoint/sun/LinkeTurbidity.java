package simmerpoint.sun;

import java.time.LocalDate;
import java.util.Arrays;

/**
 * Linke turbidity through the year: how many times clean, dry air would take as much out of the beam as the real air
 * with its water and haze does; 2 is very clear, 3 usual, 5 hazy. Refers to air mass 2.
 *
 * <p>By {@link AirType} it comes from a table of monthly means for mild climates of the northern hemisphere. Our
 * choices, not the table's: a value stands at the middle of its month with a smooth curve between; south of the
 * equator the year is shifted by six months. A single day may well be a unit off its monthly mean, and tropical,
 * desert or monsoon air is another matter: there a measured beam is better.
 */
public final class LinkeTurbidity {
    /** Below the cleanest air (1); leaves room for errors of a measured beam. */
    public static final double SMALLEST = 0.5;

    /** Beyond the thickest haze in which anyone would cook. */
    public static final double LARGEST = 20;

    private static final String TABLE = "linke-turbidity.tsv";
    private static final int MONTHS = 12;
    private static final int HALF_YEAR = 6;

    private final String words;
    private final YearlyCurve north;
    private final YearlyCurve south;

    private LinkeTurbidity(String words, double[] northern) {
        this.words = words;
        this.north = YearlyCurve.throughMidMonths(northern);
        this.south = YearlyCurve.throughMidMonths(shifted(northern));
    }

    /** The table's year for a {@code setting}. */
    public static LinkeTurbidity of(AirType setting) {
        String words = "monthly Linke turbidity of " + setting.word() + " air";
        return new LinkeTurbidity(words, MonthlyTable.read(TABLE).values(setting.word()));
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

    /** Where the figures for a {@code setting} come from. */
    public static String source(AirType setting) {
        return MonthlyTable.read(TABLE).source(setting.word());
    }

    /** Turbidity on {@code date} at {@code place}, above 0. */
    public double on(LocalDate date, Site place) {
        return (place.southern() ? south : north).on(date);
    }

    /** What it is in a few words, for reports. */
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
