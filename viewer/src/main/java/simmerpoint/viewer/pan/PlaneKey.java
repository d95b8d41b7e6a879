package simmerpoint.viewer.pan;

import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import simmerpoint.answer.Figures;
import simmerpoint.answer.TargetWords;
import simmerpoint.drawing.FluxColours;
import simmerpoint.sampling.Estimate;
import simmerpoint.target.Spot;
import simmerpoint.viewer.theme.Shade;

/** What the marks on the map mean, with their figures. */
final class PlaneKey {
    private static final double SAMPLE = 26;
    private static final double STEP = 13.5;

    private final Pen pen;
    private final GraphicsContext g;
    private final MapState state;
    private final Figures figures;
    private final TargetWords words;
    private double y;
    private double foot;

    PlaneKey(Pen pen, MapState state) {
        this.pen = pen;
        g = pen.g();
        this.state = state;
        figures = new Figures(state.units());
        words = TargetWords.of(state.result().scenario().target());
    }

    void paint(double x, double top, double room, double height) {
        y = top + 10;
        foot = top + height + STEP;
        double gap = height > 250 ? 9 : 4;
        Spot spot = state.result().spot();
        double across = 2 * state.result().scenario().target().radiusMetres();
        line(x, gap, room, words.noun() + ", " + figures.length(across) + " across");
        circle(x, gap, room, "50\u00a0%", spot.radius50(), PlaneDrawing.DASHED);
        circle(x, gap, room, "90\u00a0%", spot.radius90(), PlaneDrawing.DOTTED);
        if (state.result().ledger().caught().value() > 0) {
            entry(x, gap, room, "hottest spot " + figures.flux(spot.peakFlux()), () -> pen.cross(x + 10, y - 4, 6));
            entry(x, gap, room, "centre of the light", () -> diamond(g, x + 10, y - 4));
        }
        if (words.isPan()) {
            text(x - SAMPLE, gap, room, "As if seen from above through the pan", () -> {});
        } else {
            text(x - SAMPLE, gap, room, "Seen from the dish", () -> {});
        }
    }

    static void diamond(GraphicsContext g, double x, double y) {
        double[] xs = {x, x + 5, x, x - 5};
        double[] ys = {y - 5, y, y + 5, y};
        g.setFill(Color.WHITE);
        g.fillPolygon(xs, ys, 4);
        g.setStroke(Color.BLACK);
        g.setLineWidth(1.2);
        g.strokePolygon(xs, ys, 4);
        g.setLineWidth(1);
    }

    private void circle(double x, double gap, double room, String share, Optional<Estimate> radius, double... dashes) {
        line(x, gap, room, circle(share, radius, figures), dashes);
    }

    /** What a circle means; there is none for more light than comes to the level of underside or disc. */
    static String circle(String share, Optional<Estimate> radius, Figures figures) {
        return radius.map(r -> share + " of light within " + figures.length(r.value(), 2) + " of the middle")
                .orElse("less than " + share + " of light gets to this level");
    }

    private void line(double x, double gap, double room, String text, double... dashes) {
        entry(x, gap, room, text, () -> {
            g.setLineDashes(dashes);
            g.setStroke(Color.WHITE);
            g.setLineWidth(1.8);
            g.strokeLine(x + 2, y - 4, x + 18, y - 4);
            g.setLineDashes();
            g.setLineWidth(1);
        });
    }

    /** A mark and what it means; none if it would not find room as a whole. */
    private void entry(double x, double gap, double room, String text, Runnable mark) {
        text(x, gap, room, text, () -> {
            int rgb = FluxColours.rgb(0.3);
            g.setFill(Color.rgb(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF));
            g.fillRect(x, y - 11, 20, 14);
            mark.run();
        });
    }

    /** Words as a whole, as long as there is height for them; what comes after words that were left out is left out too. */
    private void text(double x, double gap, double room, String text, Runnable before) {
        Font font = Pen.font(11);
        List<String> lines = Pen.broken(text, font, room - SAMPLE);
        if (y + STEP * (lines.size() - 1) + 2 > foot) {
            foot = y;
            return;
        }
        before.run();
        g.setFill(pen.shade(Shade.QUIET));
        for (String line : lines) {
            pen.words(line, x + SAMPLE, y, TextAlignment.LEFT, font, room - SAMPLE);
            y += STEP;
        }
        y += gap;
    }
}
