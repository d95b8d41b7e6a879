package simmerpoint.drawing.chart;

import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Style;

/** What the marks of a {@link MoveChart} mean. */
public final class MoveLegend {
    private MoveLegend() {}

    /** All of them. */
    public static Legend of() {
        return new Legend()
                .with(13, (canvas, x, y) -> MoveMarks.triangle(canvas, x + 6.5, y - 10), "where the pan stands")
                .with(13, MoveLegend::flag, "recommended for a simmer")
                .with(22, MoveLegend::range, "four in five pans change here");
    }

    private static void flag(Canvas canvas, double x, double y) {
        new Flag(x + 2, y + 2, Double.NEGATIVE_INFINITY).draw(canvas);
    }

    private static void range(Canvas canvas, double x, double y) {
        canvas.line(Style.RANGE, x + 1, y - 4, x + 21, y - 4);
        canvas.draw(Style.KNOT, new Circle(x + 11, y - 4, 2.9));
    }
}
