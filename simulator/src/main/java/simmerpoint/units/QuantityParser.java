package simmerpoint.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads one number with one unit, such as {@code 36 in}, {@code 0.25°}, {@code 1e-3 m}, {@code 85 %}, also a fraction
 * ({@code 6 1/4 in}) or feet with inches ({@code 5 ft 3 in}). The decimal sign is a point whatever the machine's language; whatever could be read in two ways is refused with a sentence.
 */
public final class QuantityParser {
    private static final Pattern NUMBER =
            Pattern.compile("([+\\-−]?)([0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE]([+\\-−]?)([0-9]+))?");
    private static final Pattern COMMA = Pattern.compile("[+\\-−]?[0-9.]*,[0-9].*");
    private static final Pattern HEX = Pattern.compile("[+\\-−]?0[xXoObB][0-9a-fA-F].*");
    private static final Pattern NOT_FINITE = Pattern.compile("(?i)[+\\-−]?\\.?(nan|inf|infinity|∞).*");
    private static final Pattern GROUPED = Pattern.compile("[\\s_'’]*[0-9].*");
    private static final Pattern SECOND_NUMBER = Pattern.compile("[^0-9]+[0-9.]+.*");
    private static final Pattern POWER_UNIT = Pattern.compile("[A-Za-z]+/?[A-Za-z]*\\^?[0-9]");
    private static final int LONGEST_NUMBER = 40;
    private static final int LARGEST_EXPONENT = 400;

    private QuantityParser() {}

    /** Reads a quantity of the dimension; messages show the dimension's own example. */
    public static double parse(String text, Dimension dimension) throws QuantityException {
        return parse(text, dimension, dimension.example());
    }

    /**
     * Reads a quantity.
     *
     * @param text number and unit, with or without a space between them
     * @param dimension what it must be
     * @param example how it may be written, for messages
     * @return the value in SI units or radians; finite
     * @throws QuantityException if it is anything else
     */
    public static double parse(String text, Dimension dimension, String example) throws QuantityException {
        String trimmed = asDecimal(InputText.normalised(text), dimension);
        Matcher matcher = NUMBER.matcher(trimmed);
        boolean number = matcher.lookingAt();
        String rest = number ? trimmed.substring(matcher.end()) : "";
        Optional<Unit> unit = number ? UnitTable.find(dimension, rest.strip()) : Optional.empty();
        if (unit.isEmpty()) {
            throw new QuantityException(refusal(trimmed, number, rest, dimension, "; write for instance " + example));
        }
        return finite(trimmed, unit.get().toSi(number(trimmed, matcher)));
    }

    /** The same text with one decimal number and one unit, if it holds a fraction or feet with inches. */
    static String asDecimal(String text, Dimension dimension) {
        return text.length() <= LONGEST_NUMBER
                ? FractionConverter.decimal(text, dimension).orElse(text)
                : text;
    }

    /** Reads a whole number, 0 or more or less. */
    public static int parseCount(String text, String example) throws QuantityException {
        double value = parse(text, Dimension.COUNT, example);
        if (!(value == Math.rint(value) && Math.abs(value) <= Integer.MAX_VALUE)) {
            throw new QuantityException(
                    InputText.shown(text) + " is not a whole number; write for instance " + example);
        }
        return (int) value;
    }

    /** Why the text is no quantity of the dimension. */
    private static String refusal(String text, boolean number, String rest, Dimension dimension, String advice) {
        String shown = InputText.shown(text);
        if (text.isEmpty()) {
            return "there is nothing here; " + dimension.words() + " is needed" + advice;
        }
        if (COMMA.matcher(text).matches()) {
            return shown + " has a comma; decimals take a point and thousands no separator"
                    + withPoint(text).map(t -> "; write " + t).orElse(advice);
        }
        if (HEX.matcher(text).matches()) {
            return shown + " is not a decimal number" + advice;
        }
        if (NOT_FINITE.matcher(text).matches()) {
            return shown + " is not a finite number" + advice;
        }
        return number ? wrongUnit(shown, rest, dimension, advice) : shown + " is not " + dimension.words() + advice;
    }

    private static Optional<String> withPoint(String text) {
        boolean oneComma = text.indexOf(',') == text.lastIndexOf(',') && !text.contains(".");
        boolean thousands = text.matches("[+\\-−]?[1-9][0-9]{0,2},[0-9]{3}(?![0-9]).*");
        return oneComma && !thousands && text.length() < 20 ? Optional.of(text.replace(',', '.')) : Optional.empty();
    }

    private static String wrongUnit(String shown, String rest, Dimension dimension, String advice) {
        String symbol = rest.strip();
        if (symbol.isEmpty()) {
            return shown + " has no unit, and " + dimension.words() + " needs one" + advice;
        }
        if (UnitTable.findAnywhere(symbol).isPresent()) {
            return shown + " is not " + dimension.words() + advice;
        }
        if (GROUPED.matcher(rest).matches()) {
            return shown + " is more than one number; thousands take no separator" + advice;
        }
        if (SECOND_NUMBER.matcher(symbol).matches()
                && !POWER_UNIT.matcher(symbol).matches()) {
            return shown + " is more than one quantity; give one number with one unit" + advice;
        }
        String guess = UnitTable.findIgnoringCase(dimension, symbol)
                .map(u -> "; did you mean " + u.symbol() + "?")
                .orElse(advice);
        return shown + " is not " + dimension.words() + ": " + InputText.shown(symbol) + " is not a known unit" + guess;
    }

    private static BigDecimal number(String text, Matcher m) throws QuantityException {
        if (m.end() > LONGEST_NUMBER) {
            throw new QuantityException(
                    InputText.shown(text) + " has more than " + LONGEST_NUMBER + " characters before its unit");
        }
        int exponent = m.group(4) == null ? 0 : exponent(text, m.group(4));
        BigDecimal size = new BigDecimal(m.group(2).endsWith(".") ? m.group(2) + "0" : m.group(2));
        BigDecimal scaled = size.scaleByPowerOfTen(isMinus(m.group(3)) ? -exponent : exponent);
        return isMinus(m.group(1)) ? scaled.negate() : scaled;
    }

    private static int exponent(String text, String digits) throws QuantityException {
        String significant = digits.replaceFirst("^0+(?=.)", "");
        if (significant.length() > 3 || Integer.parseInt(significant) > LARGEST_EXPONENT) {
            throw new QuantityException(InputText.shown(text) + " is too large or too small a number");
        }
        return Integer.parseInt(significant);
    }

    private static boolean isMinus(String sign) {
        return "-".equals(sign) || "−".equals(sign);
    }

    private static double finite(String text, double value) throws QuantityException {
        if (!Double.isFinite(value)) {
            throw new QuantityException(InputText.shown(text) + " is too large a number");
        }
        return value;
    }
}
