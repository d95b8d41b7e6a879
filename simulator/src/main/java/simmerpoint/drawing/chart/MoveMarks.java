package simmerpoint.drawing.chart;

import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;

/** Marks of where the pan stands. */
final class MoveMarks {
    /** From the upper edge of a chart to its mark, units: names of levels stand above. */
    static final double BELOW_NAMES = 19;

    /** Height of the triangle, units. */
    static final double HIGH = 11;

    private static final double HALF = 6.5;

    private MoveMarks() {}

    /** A triangle that points down, its upper edge at {@code top}. */
    static void triangle(Canvas canvas, double x, double top) {
        canvas.draw(Style.MARK, Path.closed(x, top + HIGH, x - HALF, top, x + HALF, top));
    }

    /** What a mouse takes hold of, below the foot of a chart. */
    static void handle(Canvas canvas, double x, double foot) {
        canvas.draw(
                Style.HANDLE,
                Path.closed(x, foot - 1, x + 8, foot + 8, x + 8, foot + 16, x - 8, foot + 16, x - 8, foot + 8));
    }
}
