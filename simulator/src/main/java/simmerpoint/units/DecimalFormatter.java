package simmerpoint.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Formats decimal numbers with significant digits; always with a decimal point. */
public final class DecimalFormatter {
    private static final int MOST_DECIMALS = 9;

    private DecimalFormatter() {}

    /** Rounded to {@code decimals} places but not to fewer than {@code least} significant digits; no trailing zeros. */
    public static String decimals(double value, int decimals, int least) {
        BigDecimal exact = new BigDecimal(value);
        int place = Math.max(decimals, least - 1 - exponent(value));
        return stripped(exact.setScale(Math.min(place, MOST_DECIMALS), RoundingMode.HALF_EVEN));
    }

    /** A number without zeros at the end of its decimals. */
    public static String stripped(String number) {
        if (number.indexOf('.') < 0) {
            return number;
        }
        int end = number.length();
        while (number.charAt(end - 1) == '0') {
            end--;
        }
        return number.substring(0, number.charAt(end - 1) == '.' ? end - 1 : end);
    }

    /** Without zeros at the end of its decimals and without a minus before 0. */
    static String stripped(BigDecimal number) {
        return number.signum() == 0 ? "0" : stripZeros(number).toPlainString();
    }

    private static BigDecimal stripZeros(BigDecimal number) {
        BigDecimal bare = number.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }

    /** The power of ten of the first significant digit; 0 for 0. */
    private static int exponent(double value) {
        BigDecimal number = new BigDecimal(value);
        return number.signum() == 0 ? 0 : number.precision() - number.scale() - 1;
    }
}
