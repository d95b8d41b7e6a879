package simmerpoint.sun;

import java.math.BigDecimal;
import java.math.MathContext;

/** Range checks and number formats of the sun shapes. */
final class SunShapeChecks {
    /** Greatest angle from the sun's centre, rad. */
    static final double WIDEST = 0.1;

    private SunShapeChecks() {}

    /** Refuses NaN and what is not above 0 up to {@code greatest}. */
    static void aboveZero(String name, double value, double greatest) {
        if (!(value > 0 && value <= greatest)) {
            throw new IllegalArgumentException(name + " " + value + " rad is outside above 0 to " + greatest);
        }
    }

    /** Refuses NaN and what is outside 0 to 1. */
    static double share(double u) {
        if (!(u >= 0 && u <= 1)) {
            throw new IllegalArgumentException("share " + u + " is outside 0 to 1");
        }
        return u;
    }

    /** An angle in mrad, four significant digits. */
    static String mrad(double radians) {
        return fourDigits(1e3 * radians) + " mrad";
    }

    /** A number in plain notation with at most four significant digits. */
    static String fourDigits(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }
}
