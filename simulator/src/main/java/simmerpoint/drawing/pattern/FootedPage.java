package simmerpoint.drawing.pattern;

import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;

/**
 * A page with a heading and the rulers at its foot.
 *
 * @param heading what it is
 * @param words below it
 * @param body stands under them, as high as it wants to be
 * @param foot stands above the rulers
 * @param unit metres of a unit
 */
record FootedPage(String heading, String words, Drawing body, String foot, double unit) implements Drawing {
    /** Height of the heading and the words below it. */
    static final double HEAD = 44;

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEAD + body.height(width, metrics) + PatternFoot.HEIGHT;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        canvas.write(Text.at(box.x(), box.y() + 18, heading)
                .in(TextStyle.HEADING)
                .size(18)
                .within(box.width()));
        canvas.write(Text.at(box.x(), box.y() + 36, words).in(TextStyle.SOFT).within(box.width()));
        double rest = box.height() - PatternFoot.HEIGHT;
        double room = Math.min(rest - HEAD, body.height(box.width(), canvas.metrics()));
        body.draw(canvas, new Box(box.x(), box.y() + HEAD, box.width(), room));
        new PatternFoot(foot, "", unit).draw(canvas, new Box(box.x(), box.y() + rest, box.width(), PatternFoot.HEIGHT));
    }
}
