package simmerpoint.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Formats decimal numbers with significant digits; always with a decimal point. */
final class DecimalFormatter {
    private static final int MOST_DIGITS = 7;
    private static final int MOST_DECIMALS = 9;
    private static final int LONGEST_PLAIN = 30;

    private DecimalFormatter() {}

    /** Rounded to {@code decimals} places but not to fewer than {@code least} significant digits; no trailing zeros. */
    static String decimals(double value, int decimals, int least) {
        BigDecimal exact = new BigDecimal(value);
        int place = Math.max(decimals, least - 1 - exponent(value));
        return stripped(exact.setScale(Math.min(place, MOST_DECIMALS), RoundingMode.HALF_EVEN));
    }

    /** Without zeros at the end of its decimals and without a minus before 0. */
    static String stripped(BigDecimal number) {
        return number.signum() == 0 ? "0" : stripZeros(number).toPlainString();
    }

    /** With every digit; as a power of ten where it would be longer than 30 characters. */
    static String exact(BigDecimal number) {
        String plain = stripped(number);
        return plain.length() <= LONGEST_PLAIN
                ? plain
                : number.stripTrailingZeros().toString();
    }

    private static BigDecimal stripZeros(BigDecimal number) {
        BigDecimal bare = number.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }

    /**
     * Decimal place of the last significant digit of a value with this standard error: the error keeps one digit, or two
     * if the first is a 1 (common practice), and the value at most seven.
     */
    static int lastPlace(double value, double standardError) {
        double rounded = new BigDecimal(standardError)
                .round(new MathContext(2, RoundingMode.HALF_EVEN))
                .doubleValue();
        int first = exponent(rounded);
        int place = rounded < 2 * Math.pow(10, first) ? 1 - first : -first;
        return value == 0 ? place : Math.min(place, MOST_DIGITS - 1 - exponent(value));
    }

    /** Rounded to that decimal place (negative: tens, hundreds …), zeros kept, no minus before 0. */
    static String atPlace(double value, int place) {
        BigDecimal number = new BigDecimal(value).setScale(place, RoundingMode.HALF_EVEN);
        return (number.signum() == 0 ? number.abs() : number)
                .setScale(Math.max(place, 0))
                .toPlainString();
    }

    /** The power of ten of the first significant digit; 0 for 0. */
    static int exponent(double value) {
        BigDecimal number = new BigDecimal(value);
        return number.signum() == 0 ? 0 : number.precision() - number.scale() - 1;
    }
}
