package simmerpoint.report;

import java.text.Normalizer;

/** Text for a terminal that shows nothing beyond ASCII. */
public final class Ascii {
    private Ascii() {}

    /** {@code text} with every sign beyond ASCII replaced; accents are dropped, and what is unknown becomes "?". */
    public static String of(String text) {
        StringBuilder out = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFD).codePoints().forEach(c -> {
            if (Character.getType(c) != Character.NON_SPACING_MARK) {
                out.append(c < 128 ? Character.toString(c) : replacement(c));
            }
        });
        return out.toString();
    }

    private static String replacement(int codePoint) {
        return switch (codePoint) {
            case '\u00b1' -> "+-";
            case '\u2212', '\u2013', '\u2014' -> "-";
            case '\u00b2' -> "2";
            case '\u00b3' -> "3";
            case '\u00f7' -> "/";
            case '\u00d7' -> "x";
            case '\u00b0' -> " deg";
            case '\u201c', '\u201d' -> "\"";
            case '\u2019' -> "'";
            case '\u00a0' -> " ";
            case '\u03c0' -> "pi";
            case '\u00df' -> "ss";
            default -> "?";
        };
    }
}
