package simmerpoint.viewer.pan;

import simmerpoint.drawing.Box;
import simmerpoint.drawing.chart.MoveChart;
import simmerpoint.drawing.chart.Scale;

/**
 * Where the curves lie on a drawing, for the mouse.
 *
 * @param scale of pull-backs, m
 * @param box in which the curves lie, px
 */
record CurveFrame(Scale scale, Box box) {
    private static final double HANDLE = 18;
    private static final double NEAR = 9;

    /** For a chart on a drawing of that size. */
    static CurveFrame of(MoveChart chart, double width, double height) {
        Box whole = new Box(0, 0, width, height);
        return new CurveFrame(chart.scale(whole), chart.inner(whole));
    }

    double x(double pullBack) {
        return scale.at(pullBack);
    }

    /** The pull-back at a point, between the ends, m. */
    double pullBack(double x) {
        return scale.figure(x);
    }

    /** Whether a point is on the mark of a place, or so near that it was meant. */
    boolean hits(double pullBack, double x, double y) {
        return Math.abs(x - x(pullBack)) <= NEAR && y >= 0 && y <= box.bottom() + HANDLE;
    }

    /** Whether a point is among the curves. */
    boolean inside(double x, double y) {
        return box.contains(x, y);
    }
}
