package simmerpoint.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A unit: the SI value of x units is (x + offset) × factor. Decimal factors are exact, so 12.3 mm is the double closest to
 * 0.0123 m.
 *
 * @param symbol as users write it
 * @param dimension what it measures
 * @param factor SI units per unit, not 0
 * @param offset added before multiplying; 0 but for temperatures
 */
record Unit(String symbol, Dimension dimension, BigDecimal factor, BigDecimal offset) {
    /** The SI value of {@code number} units. */
    double toSi(BigDecimal number) {
        return number.add(offset).multiply(factor).doubleValue();
    }

    /** How many of this unit the SI value is, to 17 digits. */
    BigDecimal fromSi(double si) {
        return new BigDecimal(Double.toString(si))
                .divide(factor, SEVENTEEN_DIGITS)
                .subtract(offset, SEVENTEEN_DIGITS);
    }

    private static final MathContext SEVENTEEN_DIGITS = new MathContext(17);
}
