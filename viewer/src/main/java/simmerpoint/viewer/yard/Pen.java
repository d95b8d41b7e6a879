package simmerpoint.viewer.yard;

import java.util.List;
import java.util.function.ToDoubleFunction;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import simmerpoint.setup.SideView.Place;
import simmerpoint.viewer.theme.Shade;
import simmerpoint.viewer.theme.Theme;

/** Lines, areas and words on a canvas in the shades of a theme. */
final class Pen {
    static final double LETTERS = 12;
    private static final double HEAD = 5;
    private static final Font PLAIN = Font.font(LETTERS);
    private static final Font BOLD = Font.font(null, FontWeight.BOLD, LETTERS);

    final GraphicsContext g;
    private final Theme theme;

    Pen(GraphicsContext g, Theme theme) {
        this.g = g;
        this.theme = theme;
        g.setTextBaseline(VPos.CENTER);
    }

    Color colour(Shade shade) {
        return shade.in(theme);
    }

    void stroke(Shade shade, double width, double... dashes) {
        stroke(colour(shade), width, dashes);
    }

    void stroke(Color colour, double width, double... dashes) {
        g.setStroke(colour);
        g.setLineWidth(width);
        g.setLineDashes(dashes);
    }

    void line(double x1, double y1, double x2, double y2) {
        g.strokeLine(x1, y1, x2, y2);
    }

    void fill(Color colour, List<Place> points, SideFrame frame) {
        g.setFill(colour);
        g.fillPolygon(xs(points, frame::x), xs(points, frame::y), points.size());
    }

    void outline(List<Place> points, SideFrame frame) {
        g.strokePolygon(xs(points, frame::x), xs(points, frame::y), points.size());
    }

    void way(List<Place> points, SideFrame frame) {
        g.strokePolyline(xs(points, frame::x), xs(points, frame::y), points.size());
    }

    private static double[] xs(List<Place> points, ToDoubleFunction<Place> coordinate) {
        double[] out = new double[points.size()];
        for (int k = 0; k < out.length; k++) {
            out[k] = coordinate.applyAsDouble(points.get(k));
        }
        return out;
    }

    /** The point of an arrow that flies along (dx, dy). */
    void head(double x, double y, double dx, double dy) {
        double length = Math.hypot(dx, dy);
        if (length > 0) {
            double ux = HEAD * dx / length;
            double uy = HEAD * dy / length;
            g.strokePolyline(
                    new double[] {x - ux + 0.6 * uy, x, x - ux - 0.6 * uy},
                    new double[] {y - uy - 0.6 * ux, y, y - uy + 0.6 * ux},
                    3);
        }
    }

    /** Words with a rim of the sheet's colour, so that lines behind do not cross them. */
    void words(Shade shade, TextAlignment alignment, double x, double y, String text) {
        words(shade, alignment, x, y, text, PLAIN);
    }

    /** Words that must be seen. */
    void strongWords(Shade shade, TextAlignment alignment, double x, double y, String text) {
        words(shade, alignment, x, y, text, BOLD);
    }

    /** How wide such words are. */
    static double strongWidth(String text) {
        return width(text, BOLD);
    }

    /** How wide plain words are. */
    static double plainWidth(String text) {
        return width(text, PLAIN);
    }

    private static double width(String text, Font font) {
        Text measured = new Text(text);
        measured.setFont(font);
        return measured.getLayoutBounds().getWidth();
    }

    private void words(Shade shade, TextAlignment alignment, double x, double y, String text, Font font) {
        g.setFont(font);
        g.setTextAlign(alignment);
        stroke(colour(Shade.SHEET).deriveColor(0, 1, 1, 0.85), 4);
        g.strokeText(text, x, y);
        g.setFill(colour(shade));
        g.fillText(text, x, y);
    }

    /** A length from y1 up to y2 with small bars at its ends. */
    void upright(double x, double y1, double y2, String text, TextAlignment side) {
        stroke(Shade.QUIET, 1);
        line(x, y1, x, y2);
        line(x - 4, y1, x + 4, y1);
        line(x - 4, y2, x + 4, y2);
        double at = side == TextAlignment.LEFT ? x + 6 : side == TextAlignment.RIGHT ? x - 6 : x;
        words(Shade.WORD, side, at, (y1 + y2) / 2, text);
    }

    /** A length from x1 to x2 with small bars at its ends and its words under it. */
    void across(double x1, double x2, double y, String text) {
        stroke(Shade.QUIET, 1);
        line(x1, y, x2, y);
        line(x1, y - 4, x1, y + 4);
        line(x2, y - 4, x2, y + 4);
        words(Shade.WORD, TextAlignment.CENTER, (x1 + x2) / 2, y + 11, text);
    }
}
