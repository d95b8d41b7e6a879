package simmerpoint.viewer.yard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import simmerpoint.viewer.theme.Shade;

/** Words on a small sheet of their own, broken into lines and kept inside the picture. */
final class Captions {
    /** Widest words, px. */
    static final double MOST = 250;

    private static final double LINE = 16;
    private static final double PAD = 7;

    private Captions() {}

    /** How high the sheet of {@code text} is when its words are that wide at most, in a picture of that width, px. */
    static double height(String text, double most, double width) {
        return lines(text, Math.min(most, width - 40)).size() * LINE + PAD;
    }

    /** Paints {@code text} with its middle at x and its top at y, moved inwards where it would reach out. */
    static void paint(Pen pen, String text, double x, double y, double width, double height, Shade shade) {
        paint(pen, text, MOST, x, y, width, height, shade);
    }

    /** The same with words of that width at most. */
    static void paint(Pen pen, String text, double most, double x, double y, double width, double height, Shade shade) {
        List<String> lines = lines(text, Math.min(most, width - 40));
        double wide = lines.stream().mapToDouble(Captions::width).max().orElse(0) + 2 * PAD;
        double high = lines.size() * LINE + PAD;
        double left = Math.max(4, Math.min(width - wide - 4, x - wide / 2));
        double top = Math.max(4, Math.min(height - high - 4, y));
        pen.g.setFill(pen.colour(Shade.SHEET));
        pen.g.fillRoundRect(left, top, wide, high, 8, 8);
        pen.stroke(shade, 1.5);
        pen.g.strokeRoundRect(left, top, wide, high, 8, 8);
        for (int k = 0; k < lines.size(); k++) {
            double at = top + PAD / 2 + (k + 0.5) * LINE;
            pen.strongWords(shade, TextAlignment.LEFT, left + PAD, at, lines.get(k));
        }
    }

    private static List<String> lines(String text, double most) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer) > most) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }

    private static double width(String line) {
        Text text = new Text(line);
        text.setFont(Font.font(null, javafx.scene.text.FontWeight.BOLD, Pen.LETTERS));
        return text.getLayoutBounds().getWidth();
    }
}
