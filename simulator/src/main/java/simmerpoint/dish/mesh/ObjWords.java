package simmerpoint.dish.mesh;

import java.util.Arrays;

/** The words of one line of a mesh file. One object serves all lines. */
final class ObjWords {
    /** What {@link #corner} gives for a word that is no corner. */
    static final long NONE = Long.MIN_VALUE;

    private static final int MOST_DIGITS = 15;

    private String text = "";
    private int[] starts = new int[16];
    private int[] ends = new int[16];
    private int count;

    /** Takes the next line, which is not blank. */
    void split(String line) {
        text = line;
        count = 0;
        int i = 0;
        while (i < line.length()) {
            if (line.charAt(i) <= ' ') {
                i++;
                continue;
            }
            if (count == starts.length) {
                starts = Arrays.copyOf(starts, 2 * count);
                ends = Arrays.copyOf(ends, 2 * count);
            }
            starts[count] = i;
            while (i < line.length() && line.charAt(i) > ' ') {
                i++;
            }
            ends[count++] = i;
        }
    }

    /** Number of words, the keyword included. */
    int count() {
        return count;
    }

    /** Word {@code i}; 0 is the keyword. */
    String get(int i) {
        return text.substring(starts[i], ends[i]);
    }

    /** Word {@code i} as a number, or NaN if it is anything but digits, sign, point and exponent. */
    double number(int i) {
        for (int k = starts[i]; k < ends[i]; k++) {
            char c = text.charAt(k);
            if (!(c >= '0' && c <= '9') && c != '-' && c != '+' && c != '.' && c != 'e' && c != 'E') {
                return Double.NaN;
            }
        }
        try {
            return Double.parseDouble(get(i));
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** The vertex number of a corner written v, v/vt, v//vn or v/vt/vn, or {@link #NONE}; huge ones come out as huge. */
    long corner(int i) {
        int end = endOfInteger(starts[i], ends[i]);
        if (end == starts[i] || !isTail(end, ends[i])) {
            return NONE;
        }
        if (end - starts[i] > MOST_DIGITS) {
            return text.charAt(starts[i]) == '-' ? -Long.MAX_VALUE : Long.MAX_VALUE;
        }
        return Long.parseLong(text, starts[i], end, 10);
    }

    /** Whether there is nothing, /vt, //vn or /vt/vn from {@code from} on. */
    private boolean isTail(int from, int end) {
        if (from == end) {
            return true;
        }
        if (text.charAt(from) != '/') {
            return false;
        }
        int texture = endOfInteger(from + 1, end);
        if (texture == end) {
            return texture > from + 1;
        }
        return text.charAt(texture) == '/' && texture + 1 < end && endOfInteger(texture + 1, end) == end;
    }

    /** End of the whole number that starts at {@code from}, or {@code from} if none does. */
    private int endOfInteger(int from, int end) {
        int digits = from < end && text.charAt(from) == '-' ? from + 1 : from;
        int i = digits;
        while (i < end && text.charAt(i) >= '0' && text.charAt(i) <= '9') {
            i++;
        }
        return i == digits ? from : i;
    }
}
