package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;

/** Text broken into lines. */
public final class Wrapping {
    private Wrapping() {}

    /**
     * Breaks {@code text} at spaces (not at no-break spaces), or inside a word that is too long for a line.
     *
     * @param text one line or a long one
     * @param first what the first line starts with
     * @param rest what every other line starts with
     * @param width most characters of a line; more than either start is long
     */
    public static List<String> lines(String text, String first, String rest, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(first);
        boolean fresh = true;
        for (String word : text.split(" ")) {
            if (!fresh && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line = new StringBuilder(rest);
                fresh = true;
            }
            String left = word;
            while (fresh && line.length() + left.length() > width) {
                int cut = Math.max(1, width - line.length());
                lines.add(line + left.substring(0, cut));
                line = new StringBuilder(rest);
                left = left.substring(cut);
            }
            line.append(fresh ? "" : " ").append(left);
            fresh = false;
        }
        lines.add(line.toString());
        return lines;
    }
}
