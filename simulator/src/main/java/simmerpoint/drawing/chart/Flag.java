package simmerpoint.drawing.chart;

import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;

/**
 * A flag that stands on a place of a curve: what is recommended. Nothing else is marked so. Where there is no height above, it hangs
 * down.
 *
 * @param x of the place, units
 * @param y of the place
 * @param top what it must not rise above
 */
record Flag(double x, double y, double top) {
    private static final double POLE = 20;
    private static final double CLOTH = 11;
    private static final double RIM = 4;

    private double up() {
        return y - POLE >= top ? -1 : 1;
    }

    /** What it covers. */
    Box room() {
        double from = Math.min(y, y + up() * POLE);
        return new Box(x - RIM, from - RIM, CLOTH + 2 * RIM, POLE + 2 * RIM);
    }

    void draw(Canvas canvas) {
        double head = y + up() * POLE;
        canvas.line(Style.FLAG_POLE, x, y, x, head);
        canvas.draw(Style.FLAG_CLOTH, Path.closed(x, head, x + CLOTH, head - up() * 5, x, head - up() * 10));
    }
}
