package simmerpoint.units;

/** Lengths as a saw wants them: whole millimetres, or inches with sixteenths. */
public final class SawLength {
    private static final int SIXTEENTHS = 16;
    private static final double MILLIMETRE = 0.001;
    private static final char NBSP = '\u00a0';

    private SawLength() {}

    /** A length (m) with its unit: "612 mm" or "24 1/8 in". */
    public static String text(double metres, UnitSystem system) {
        return switch (system) {
            case METRIC -> number(metres, system) + NBSP + "mm";
            case INCH -> number(metres, system) + NBSP + "in";
        };
    }

    /** The same without its unit. */
    public static String number(double metres, UnitSystem system) {
        return switch (system) {
            case METRIC ->
                signed(Math.round(metres / MILLIMETRE), Long.toString(Math.abs(Math.round(metres / MILLIMETRE))));
            case INCH -> InchLength.fraction(metres / UnitSystem.INCH.shortUnitMetres(), SIXTEENTHS);
        };
    }

    /** Two lengths with one unit: "612 × 305 mm". */
    public static String text(double width, double height, UnitSystem system) {
        return number(width, system) + " \u00d7 " + text(height, system);
    }

    private static String signed(long count, String size) {
        return count < 0 ? "\u2212" + size : size;
    }
}
