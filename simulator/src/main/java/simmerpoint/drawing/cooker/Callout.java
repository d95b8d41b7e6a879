package simmerpoint.drawing.cooker;

import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.RoundBox;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;

/**
 * Words on a small sheet of their own, broken into lines and kept inside the drawing.
 *
 * @param words what is said
 * @param room widest line, units
 * @param isWarning whether something is wrong; else it belongs to a handle
 */
public record Callout(String words, double room, boolean isWarning) {
    /** Widest words, units. */
    public static final double MOST = 250;

    private static final double LINE = 16;
    private static final double PAD = 7;
    private static final double EDGE = 4;

    /** Of a handle, in a drawing of that width. */
    public static Callout ofHandle(String words, double width) {
        return new Callout(words, Math.min(MOST, width - 40), false);
    }

    private Text text() {
        return Text.at(0, 0, words)
                .in(isWarning ? TextStyle.WARNING : TextStyle.HANDLE)
                .within(room);
    }

    /** Height of the sheet, units. */
    double height(TextMetrics metrics) {
        return metrics.lines(text()).size() * LINE + PAD;
    }

    /** Where its sheet lies with its middle at x and its top at y, moved inwards where it would reach out of a box. */
    public Box sheet(TextMetrics metrics, double x, double y, Box box) {
        double wide = metrics.lines(text()).stream()
                        .mapToDouble(line -> metrics.width(text().words(line)))
                        .max()
                        .orElse(0)
                + 2 * PAD;
        double high = height(metrics);
        double left = Math.max(box.x() + EDGE, Math.min(box.right() - wide - EDGE, x - wide / 2));
        double top = Math.max(box.y() + EDGE, Math.min(box.bottom() - high - EDGE, y));
        return new Box(left, top, wide, high);
    }

    /** Draws it on its {@link #sheet}. */
    public void draw(Canvas canvas, double x, double y, Box box) {
        List<String> lines = canvas.metrics().lines(text());
        Box sheet = sheet(canvas.metrics(), x, y, box);
        canvas.draw(isWarning ? Style.CALLOUT_WRONG : Style.CALLOUT, new RoundBox(sheet, 4));
        for (int k = 0; k < lines.size(); k++) {
            canvas.write(text().words(lines.get(k)).moved(sheet.x() + PAD, sheet.y() + PAD / 2 + k * LINE + Text.SIZE));
        }
    }
}
