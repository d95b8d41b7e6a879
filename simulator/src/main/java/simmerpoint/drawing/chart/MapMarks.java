package simmerpoint.drawing.chart;

import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.RoundBox;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;

/** Marks that are seen on every colour of a map. */
public final class MapMarks {
    private static final double PAD = 4;

    private MapMarks() {}

    /** An upright cross. */
    public static void cross(Canvas canvas, double x, double y, double arm) {
        canvas.draw(Style.OUTLINE, Path.open(x - arm, y, x + arm, y).and(Path.open(x, y - arm, x, y + arm)));
    }

    /** White words on a dark plate. */
    public static void plate(Canvas canvas, Text text) {
        Text shown = canvas.metrics().fitted(text.in(TextStyle.ON_PLATE));
        double wide = canvas.metrics().width(shown);
        double left = switch (shown.anchor()) {
            case START -> shown.x();
            case MIDDLE -> shown.x() - wide / 2;
            case END -> shown.x() - wide;
        };
        double high = shown.size();
        canvas.draw(
                Style.PLATE, new RoundBox(new Box(left - PAD, shown.y() - high, wide + 2 * PAD, high + PAD + 1), PAD));
        canvas.write(shown);
    }
}
