package simmerpoint.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads latitudes and longitudes: {@code 47.3°}, {@code 47.3° N}, {@code 47° 18' N}, {@code 8°30'20" W}, {@code -8.5°}.
 * North and east are positive.
 */
public final class GeographicAngleParser {
    private static final String NUMBER = "([0-9]+(?:\\.[0-9]*)?)";
    private static final Pattern FORM = Pattern.compile("([+\\-−]?)\\s*" + NUMBER + "\\s*(°|º|deg)?\\s*(?:" + NUMBER
            + "\\s*['′’]\\s*(?:" + NUMBER + "\\s*[\"″”]\\s*)?)?([NSEWnsew]?)");
    /** The equator and the meridian of Greenwich are 0 in any unit. */
    private static final Pattern ZERO = Pattern.compile("[+\\-−]?0(\\.0*)?");

    private static final BigDecimal SIXTY = new BigDecimal(60);
    private static final int LONGEST = 60;

    private GeographicAngleParser() {}

    /** A latitude in rad, north positive; whether it lies within 90° is for the caller to check. */
    public static double latitude(String text, String example) throws QuantityException {
        return read(text, "NS", "a latitude", example);
    }

    /** A longitude in rad, east positive; whether it lies within 180° is for the caller to check. */
    public static double longitude(String text, String example) throws QuantityException {
        return read(text, "EW", "a longitude", example);
    }

    private static double read(String text, String letters, String words, String example) throws QuantityException {
        String trimmed = InputText.normalised(text);
        if (ZERO.matcher(trimmed).matches()) {
            return 0;
        }
        Matcher m = FORM.matcher(trimmed);
        boolean geographic = trimmed.length() <= LONGEST
                && m.matches()
                && (m.group(3) != null || (!m.group(6).isEmpty() && m.group(4) == null));
        if (!geographic) {
            return QuantityParser.parse(text, Dimension.ANGLE, example);
        }
        String letter = m.group(6).toUpperCase(Locale.ROOT);
        if (!letters.contains(letter)) {
            throw new QuantityException(InputText.shown(trimmed) + " is not " + words + ", which ends in "
                    + letters.charAt(0) + " or " + letters.charAt(1) + "; write for instance " + example);
        }
        if (!m.group(1).isEmpty() && !letter.isEmpty()) {
            throw new QuantityException(InputText.shown(trimmed) + " has a sign and a letter; keep one of them");
        }
        BigDecimal degrees = new BigDecimal(whole(m.group(2)))
                .add(sixtieth(trimmed, m.group(4), 1))
                .add(sixtieth(trimmed, m.group(5), 2));
        double size = QuantityParser.parse(degrees.toPlainString() + "°", Dimension.ANGLE, example);
        boolean negative = letter.equals(letters.substring(1))
                || m.group(1).equals("-")
                || m.group(1).equals("−");
        return negative ? -size : size;
    }

    /** Minutes (power 1) or seconds (power 2) of arc as degrees. */
    private static BigDecimal sixtieth(String text, String number, int power) throws QuantityException {
        if (number == null) {
            return BigDecimal.ZERO;
        }
        BigDecimal value = new BigDecimal(whole(number));
        if (value.compareTo(SIXTY) >= 0) {
            throw new QuantityException(InputText.shown(text) + " has minutes or seconds of 60 or more");
        }
        return value.divide(SIXTY.pow(power), MathContext.DECIMAL64);
    }

    private static String whole(String number) {
        return number.endsWith(".") ? number + "0" : number;
    }
}
