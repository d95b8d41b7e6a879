package simmerpoint.units;

/** Writes SI values with metric units and about three digits, for notes on a scenario; "unknown" if not finite. */
public final class QuantityWriter {
    private static final String UNKNOWN = "unknown";
    private static final double LEAST_CENTIMETRES = 0.0995;
    private static final double LEAST_METRES = 0.9995;

    private QuantityWriter() {}

    /** A length given in m, for instance "12 mm", "24 cm" or "1.2 m". */
    public static String length(double metres) {
        double size = Math.abs(metres);
        if (size < LEAST_CENTIMETRES) {
            return text(metres / 0.001, 0, " mm");
        }
        return size < LEAST_METRES ? text(metres / 0.01, 1, " cm") : text(metres, 2, " m");
    }

    /** An angle given in rad, in degrees, for instance "0.25°". */
    public static String degrees(double radians) {
        return text(Math.toDegrees(radians), 1, "°");
    }

    /** An angle given in rad, in mrad, for instance "4.65 mrad". */
    public static String milliradians(double radians) {
        return text(radians * 1000, 2, " mrad");
    }

    /** A share as per cent, for instance "85 %". */
    public static String share(double share) {
        return text(share * 100, 1, " %");
    }

    private static String text(double number, int decimals, String unit) {
        return Double.isFinite(number) ? DecimalFormatter.decimals(number, decimals, 2) + unit : UNKNOWN;
    }
}
