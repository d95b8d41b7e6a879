package simmerpoint.drawing.output;

/** Text from outside made fit to stand in a page: whatever it says, it stays text. */
public final class XmlText {
    private static final int REPLACEMENT = 0xFFFD;
    private static final int FIRST_PRINTABLE = 0x20;
    private static final int DELETE = 0x7F;
    private static final int LAST_CONTROL = 0x9F;

    private XmlText() {}

    /**
     * {@code text} for the inside of an element or of an attribute in double quotes. The five signs that mean something in
     * HTML are written as references; what may not stand in a page at all (control characters, halves of a surrogate
     * pair, code points that are no characters) becomes the replacement character; what turns text is shown by its number.
     */
    public static String escaped(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(codePoint -> append(codePoint, out));
        return out.toString();
    }

    private static void append(int codePoint, StringBuilder out) {
        switch (codePoint) {
            case '&' -> out.append("&amp;");
            case '<' -> out.append("&lt;");
            case '>' -> out.append("&gt;");
            case '"' -> out.append("&quot;");
            case '\'' -> out.append("&#39;");
            default -> {
                if (turnsText(codePoint)) {
                    out.append(String.format("[U+%04X]", codePoint));
                } else {
                    out.appendCodePoint(mayStand(codePoint) ? codePoint : REPLACEMENT);
                }
            }
        }
    }

    /** Invisible characters that change the direction of text: with them it could read otherwise than it is. */
    private static boolean turnsText(int codePoint) {
        return (codePoint >= 0x202A && codePoint <= 0x202E)
                || (codePoint >= 0x2066 && codePoint <= 0x2069)
                || codePoint == 0x200E
                || codePoint == 0x200F
                || codePoint == 0x061C;
    }

    private static boolean mayStand(int codePoint) {
        if (codePoint < FIRST_PRINTABLE) {
            return codePoint == '\n' || codePoint == '\t';
        }
        boolean control = codePoint >= DELETE && codePoint <= LAST_CONTROL;
        boolean surrogate = codePoint >= Character.MIN_SURROGATE && codePoint <= Character.MAX_SURROGATE;
        boolean none = (codePoint & 0xFFFE) == 0xFFFE || (codePoint >= 0xFDD0 && codePoint <= 0xFDEF);
        return !control && !surrogate && !none;
    }

    /** {@code text} cut with dots to at most {@code most} code points. */
    public static String cut(String text, int most) {
        if (text.codePointCount(0, text.length()) <= most) {
            return text;
        }
        return text.substring(0, text.offsetByCodePoints(0, most - 1)).stripTrailing() + "\u2026";
    }
}
