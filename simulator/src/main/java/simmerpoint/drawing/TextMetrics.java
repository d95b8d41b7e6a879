package simmerpoint.drawing;

import java.util.ArrayList;
import java.util.List;

/** How wide text gets where it is drawn. */
@FunctionalInterface
public interface TextMetrics {
    /** Between the baselines of a paragraph, as a share of the letters' size. */
    double LEADING = 1.35;

    /** Width of a line, units. */
    double width(String words, double size, boolean bold);

    /** Width of a text at its own size, units. */
    default double width(Text text) {
        return width(text.words(), text.size(), text.style().bold());
    }

    /** The text smaller if it must be, then cut with dots, so that it keeps in its room. */
    default Text fitted(Text text) {
        double wide = width(text);
        if (wide <= text.room()) {
            return text;
        }
        double size = Math.max(text.least(), Math.floor(text.size() * text.room() / wide));
        Text smaller = text.size(size);
        return width(smaller) <= text.room() ? smaller : smaller.words(cut(smaller));
    }

    private String cut(Text text) {
        String words = text.words();
        int end = words.length();
        while (end > 0
                && width(
                                words.substring(0, end) + "\u2026",
                                text.size(),
                                text.style().bold())
                        > text.room()) {
            end = words.offsetByCodePoints(end, -1);
        }
        return words.substring(0, end).stripTrailing() + "\u2026";
    }

    /** Words broken at spaces into lines that keep in the text's room. */
    default List<String> lines(Text text) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.words().split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(text.words(longer)) > text.room()) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }
}
