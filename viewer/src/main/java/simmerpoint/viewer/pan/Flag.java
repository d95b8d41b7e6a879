package simmerpoint.viewer.pan;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;

/** A flag that stands on a place of the curve: what is recommended. Nothing else in the window is marked so. */
final class Flag {
    private static final double POLE = 20;
    private static final double CLOTH = 11;
    private static final double RIM = 4;

    private Flag() {}

    /** What it covers when planted at a point: left, right, upper edge. */
    static double[] room(double x, double y, double top) {
        return new double[] {x - RIM, x + CLOTH + RIM, (y - POLE >= top ? y - POLE : y) - RIM};
    }

    /** Plants it at a point; where there is no height above it, it hangs down. */
    static void paint(GraphicsContext g, double x, double y, double top) {
        double up = y - POLE >= top ? -1 : 1;
        double[] xs = {x, x + CLOTH, x};
        double[] ys = {y + up * POLE, y + up * (POLE - 5), y + up * (POLE - 10)};
        g.setStroke(Color.WHITE);
        g.setLineWidth(5);
        g.strokeLine(x, y, x, y + up * POLE);
        g.strokePolygon(xs, ys, 3);
        g.setStroke(Color.BLACK);
        g.setLineWidth(1.8);
        g.strokeLine(x, y, x, y + up * POLE);
        g.setFill(Color.WHITE);
        g.fillPolygon(xs, ys, 3);
        g.strokePolygon(xs, ys, 3);
        g.setLineWidth(1);
    }
}
