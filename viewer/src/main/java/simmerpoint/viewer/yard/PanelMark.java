package simmerpoint.viewer.yard;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javafx.scene.text.TextAlignment;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Vec;
import simmerpoint.viewer.theme.Shade;

/**
 * The panel pointed at: an outline of two lines, one of which shows on any colour of the panels, and its number beside it.
 */
final class PanelMark {
    private static final double HIGH = 20;
    private static final double GAP = 5;

    private final Pen pen;
    private final PanelRaster raster;
    private final double[] square;

    /** On a picture whose square of the dish stands at (left, top, side), px. */
    PanelMark(Pen pen, PanelRaster raster, double[] square) {
        this.pen = pen;
        this.raster = raster;
        this.square = square;
    }

    /** Marks a panel on a sheet of that size. */
    void paint(PanelOutline panel, double width, double height) {
        double[] x = all(panel.edge(), v -> x(v));
        double[] y = all(panel.edge(), v -> y(v));
        line(panel, x, y, Shade.SHEET, 7);
        line(panel, x, y, Shade.HANDLE, 3.2);
        tag("Panel " + (panel.panel() + 1), x, y, width, height);
    }

    private void line(PanelOutline panel, double[] x, double[] y, Shade shade, double wide) {
        pen.stroke(shade, wide);
        pen.g.strokePolygon(x, y, x.length);
        if (!panel.hole().isEmpty()) {
            pen.g.strokePolygon(
                    all(panel.hole(), v -> x(v)),
                    all(panel.hole(), v -> y(v)),
                    panel.hole().size());
        }
    }

    /** Above or below the panel, on the side away from the dish's middle if there is room. */
    private void tag(String words, double[] x, double[] y, double width, double height) {
        double left = Arrays.stream(x).min().orElse(0);
        double right = Arrays.stream(x).max().orElse(0);
        double top = Arrays.stream(y).min().orElse(0);
        double foot = Arrays.stream(y).max().orElse(0);
        double wide = Pen.strongWidth(words) + 12;
        double at = Math.max(3, Math.min(width - wide - 3, (left + right - wide) / 2));
        double above = top - GAP - HIGH;
        double below = foot + GAP;
        boolean upper = (top + foot) / 2 < square[1] + square[2] / 2;
        boolean high = upper ? above >= 3 || below + HIGH > height : above >= 3 && below + HIGH > height;
        double y0 = Math.max(3, Math.min(height - HIGH, high ? above : below));
        pen.g.setFill(pen.colour(Shade.SHEET));
        pen.g.fillRoundRect(at, y0, wide, HIGH, 8, 8);
        pen.stroke(Shade.HANDLE, 1.5);
        pen.g.strokeRoundRect(at, y0, wide, HIGH, 8, 8);
        pen.strongWords(Shade.HANDLE, TextAlignment.CENTER, at + wide / 2, y0 + HIGH / 2, words);
    }

    private static double[] all(List<Vec> corners, ToDoubleFunction<Vec> coordinate) {
        return corners.stream().mapToDouble(coordinate).toArray();
    }

    private double x(Vec v) {
        return square[0] + square[2] / 2 * (1 - v.y() / raster.reachMetres());
    }

    private double y(Vec v) {
        return square[1] + square[2] / 2 * (1 - v.x() / raster.reachMetres());
    }
}
