package simmerpoint.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Converts fractions, and feet with inches, to one decimal number with one unit. */
final class FractionConverter {
    private static final String WHOLE = "([0-9]{1,5})";
    private static final String PART = "(?:([0-9]{1,4})\\s*[/⁄]\\s*([1-9][0-9]{0,3})|([½¼¾⅛⅜⅝⅞⅓⅔]))";
    private static final String NUMBER = "(?:" + WHOLE + "(?:[ -]" + PART + "|([½¼¾⅛⅜⅝⅞⅓⅔]))?|" + PART + ")";
    private static final Pattern ONE = Pattern.compile("([+\\-−]?)" + NUMBER + "\\s*(|[^0-9/⁄\\s].*)");
    private static final Pattern FEET = Pattern.compile("([+\\-−]?)([0-9]{1,5})\\s*(?:ft|foot|feet|'|′|’)[ ,]*(?:and )?"
            + "(" + NUMBER + "|[0-9]{1,3}\\.[0-9]{1,6})\\s*(?:in|inch|inches|\"|″|”|'')");
    private static final String SIGNS = "½¼¾⅛⅜⅝⅞⅓⅔";
    private static final int[][] VALUES = {{1, 2}, {1, 4}, {3, 4}, {1, 8}, {3, 8}, {5, 8}, {7, 8}, {1, 3}, {2, 3}};
    private static final int DECIMALS = 4;
    private static final BigDecimal INCHES_IN_A_FOOT = new BigDecimal(12);

    private FractionConverter() {}

    /** The decimal that {@code text} means, if it is a number with a fraction and a unit, or feet with inches. */
    static Optional<String> decimal(String text, Dimension dimension) {
        if (dimension == Dimension.LENGTH) {
            Matcher feet = FEET.matcher(text);
            if (feet.matches()) {
                BigDecimal inches = feet.group(3).contains(".") ? new BigDecimal(feet.group(3)) : value(feet, 4);
                BigDecimal all =
                        new BigDecimal(feet.group(2)).multiply(INCHES_IN_A_FOOT).add(inches);
                return Optional.of(feet.group(1) + plain(all) + " in");
            }
        }
        Matcher one = ONE.matcher(text);
        boolean fraction = one.matches() && (one.group(2) == null || hasPart(one));
        if (!fraction || UnitTable.find(dimension, one.group(10)).isEmpty()) {
            return Optional.empty();
        }
        String unit = one.group(10).isEmpty() ? "" : " " + one.group(10);
        return Optional.of(one.group(1) + plain(value(one, 2)) + unit);
    }

    private static boolean hasPart(Matcher m) {
        return m.group(3) != null || m.group(5) != null || m.group(6) != null;
    }

    /** The number whose groups begin at {@code g}: whole, then (over, under, sign), sign, (over, under, sign). */
    private static BigDecimal value(Matcher m, int g) {
        BigDecimal whole = m.group(g) == null ? BigDecimal.ZERO : new BigDecimal(m.group(g));
        return whole.add(part(m.group(g + 1), m.group(g + 2), m.group(g + 3)))
                .add(part(null, null, m.group(g + 4)))
                .add(part(m.group(g + 5), m.group(g + 6), m.group(g + 7)));
    }

    private static BigDecimal part(String over, String under, String sign) {
        if (over != null) {
            return divided(new BigDecimal(over), new BigDecimal(under));
        }
        if (sign != null) {
            int[] value = VALUES[SIGNS.indexOf(sign)];
            return divided(new BigDecimal(value[0]), new BigDecimal(value[1]));
        }
        return BigDecimal.ZERO;
    }

    private static BigDecimal divided(BigDecimal over, BigDecimal under) {
        return over.divide(under, DECIMALS, RoundingMode.HALF_EVEN);
    }

    private static String plain(BigDecimal number) {
        return DecimalFormatter.stripped(number);
    }
}
