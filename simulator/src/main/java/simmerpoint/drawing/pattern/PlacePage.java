package simmerpoint.drawing.pattern;

import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.workshop.PanelPlace;

/**
 * A page that says which panel goes where.
 *
 * @param panels all of them
 */
record PlacePage(List<PanelPlace> panels) implements Drawing {
    private static final double HEAD = 48;

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEAD + width;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        canvas.write(Text.at(box.x(), box.y() + 18, "Which panel goes where")
                .in(TextStyle.HEADING)
                .size(18));
        canvas.write(Text.at(box.x(), box.y() + 36, "Seen from the sun, the dish\u2019s upper edge up; not to scale.")
                .in(TextStyle.SOFT));
        double side = Math.min(box.width(), box.height() - HEAD);
        new PanelMap(panels).draw(canvas, new Box(box.x(), box.y() + HEAD, side, side));
    }
}
