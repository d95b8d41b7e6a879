package simmerpoint.drawing.chart;

import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;

/** What the marks of a {@link MoveChart} mean, in one line. */
public final class MoveKey implements Drawing {
    private static final double LINE = 24;
    private static final double MARK = 26;

    @Override
    public double height(double width, TextMetrics metrics) {
        return LINE;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double third = box.width() / 3;
        double y = box.y() + LINE - 8;
        MoveMarks.triangle(canvas, box.x() + 10, y - 10);
        words(canvas, box.x(), y, "where the pan stands", third);
        new Flag(box.x() + third + 8, y + 2, Double.NEGATIVE_INFINITY).draw(canvas);
        words(canvas, box.x() + third, y, "recommended for a simmer", third);
        double x = box.x() + 2 * third;
        canvas.line(Style.RANGE, x + 1, y - 4, x + MARK - 7, y - 4);
        canvas.draw(Style.KNOT, new Circle(x + MARK / 2 - 3, y - 4, 2.9));
        words(canvas, x, y, "four in five pans change here", third);
    }

    private static void words(Canvas canvas, double x, double y, String words, double third) {
        canvas.write(Text.at(x + MARK, y, words).within(third - MARK - 6));
    }
}
