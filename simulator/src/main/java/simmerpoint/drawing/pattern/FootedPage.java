package simmerpoint.drawing.pattern;

import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.TextMetrics;

/**
 * A page with the rulers at its foot.
 *
 * @param body fills the rest
 * @param heading stands above the rulers
 * @param unit metres of a unit
 */
record FootedPage(Drawing body, String heading, double unit) implements Drawing {
    @Override
    public double height(double width, TextMetrics metrics) {
        return body.height(width, metrics) + PatternFoot.HEIGHT;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double rest = box.height() - PatternFoot.HEIGHT;
        body.draw(canvas, new Box(box.x(), box.y(), box.width(), rest));
        new PatternFoot(heading, "", unit)
                .draw(canvas, new Box(box.x(), box.y() + rest, box.width(), PatternFoot.HEIGHT));
    }
}
