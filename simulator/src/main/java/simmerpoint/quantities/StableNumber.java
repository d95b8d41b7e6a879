package simmerpoint.quantities;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as text that reads back as the same double and is the same on every Java. */
final class StableNumber {
    private static final int ENOUGH = 17;
    private static final int USUALLY_ENOUGH = 15;

    private static final int LONGEST_PLAIN_FRACTION = 6;
    private static final int LONGEST_PLAIN_WHOLE = 15;

    private StableNumber() {}

    /** The shortest of 15, 16 or 17 digits that reads back as {@code x}, which is finite. */
    static String of(double x) {
        if (x == 0) {
            return "0";
        }
        BigDecimal exact = new BigDecimal(x);
        for (int digits = USUALLY_ENOUGH; digits < ENOUGH; digits++) {
            String text = text(exact, digits);
            if (Double.parseDouble(text) == x) {
                return text;
            }
        }
        return text(exact, ENOUGH);
    }

    /** {@code x} with so many digits that count, for tables; "0" for 0 and an empty text for what is not finite. */
    static String of(double x, int digits) {
        if (!Double.isFinite(x)) {
            return "";
        }
        return x == 0 ? "0" : text(BigDecimal.valueOf(x), digits);
    }

    private static String text(BigDecimal x, int digits) {
        BigDecimal rounded = x.round(new MathContext(digits)).stripTrailingZeros();
        int exponent = rounded.precision() - rounded.scale() - 1;
        return exponent >= -LONGEST_PLAIN_FRACTION && exponent <= LONGEST_PLAIN_WHOLE
                ? rounded.toPlainString()
                : rounded.toString().replace("E+", "E");
    }
}
