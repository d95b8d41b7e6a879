package simmerpoint.units;

import java.util.regex.Pattern;

/** Spaces and unprintable characters in text that users entered. */
public final class InputText {
    private static final int LONGEST_SHOWN = 60;
    private static final Pattern RUN = Pattern.compile("[\\s\\u00a0\\u2007\\u2009\\u202f]+");
    private static final Pattern UNPRINTABLE = Pattern.compile("[\\p{Cntrl}\\p{Cf}\\p{Cs}]");

    private InputText() {}

    /** The text with every sequence of spaces (no-break and thin ones too) as one space and none at its ends. */
    public static String normalised(String text) {
        return isPlain(text) ? text : RUN.matcher(text).replaceAll(" ").strip();
    }

    /** Whether there is nothing but printable ASCII with single spaces between: nearly always, and told sooner than by a pattern. */
    private static boolean isPlain(String text) {
        boolean afterSpace = true;
        for (int k = 0; k < text.length(); k++) {
            char c = text.charAt(k);
            if (c < ' ' || c > '~' || (c == ' ' && afterSpace)) {
                return false;
            }
            afterSpace = c == ' ';
        }
        return !afterSpace || text.isEmpty();
    }

    /** The text fit for a message: on one line, without control characters, cut after 60 characters. */
    public static String shown(String text) {
        String plain =
                isPlain(text) ? text : UNPRINTABLE.matcher(normalised(text)).replaceAll("?");
        int length = plain.codePointCount(0, plain.length());
        return length <= LONGEST_SHOWN ? plain : plain.substring(0, plain.offsetByCodePoints(0, LONGEST_SHOWN)) + "…";
    }
}
