package simmerpoint.report;

import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.util.Optional;
import simmerpoint.answer.Figures;
import simmerpoint.answer.TargetWords;
import simmerpoint.drawing.FluxColours;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;

/** What the lines on the map mean, with their figures. */
final class Legend {
    private static final int SAMPLE = 62;

    private final Graphics2D g;
    private final Brush brush;
    private final TraceResult result;
    private final Figures figures;
    private final TargetWords words;
    private double y;

    Legend(Graphics2D g, TraceResult result, Figures figures, TargetWords words) {
        this.g = g;
        this.brush = new Brush(g);
        this.result = result;
        this.figures = figures;
        this.words = words;
    }

    void paint(double x, double top, double room) {
        y = top;
        double diameter = 2 * result.scenario().target().radiusMetres();
        line(x, null);
        text(x, room, "the " + words.noun() + "\u2019s outline", figures.length(diameter) + " across");
        circle(
                x,
                room,
                SpotMarks.DASHED,
                "50 % of the reflected light",
                result.spot().radius50());
        circle(
                x,
                room,
                SpotMarks.DOTTED,
                "90 % of the reflected light",
                result.spot().radius90());
        if (result.ledger().caught().value() > 0) {
            sample(SpotMarks.cross(x + SAMPLE / 2.0 - 8, y - 6), null, x);
            text(
                    x,
                    room,
                    "hottest spot of the " + words.face(),
                    figures.flux(result.spot().peakFlux()),
                    "(mean over " + figures.length(result.spot().peakDiscRadius()) + " radius)");
        } else {
            text(x, room, "no light is caught");
        }
    }

    private void circle(double x, double room, float[] dash, String name, Optional<Estimate> radius) {
        line(x, dash);
        String value = radius.map(r -> "within " + figures.length(r) + " of the middle")
                .orElse("less than that gets to this level");
        if (radius.isPresent() && radius.get().value() > reach()) {
            text(x, room, name, value, "(beyond the picture)");
        } else {
            text(x, room, name, value);
        }
    }

    /** Distance from the middle to the map's farthest corner, m. */
    private double reach() {
        FluxMap map = result.maps().crossing();
        double first = Math.max(-map.firstMin(), map.firstMin() + map.columns() * map.cellWidth());
        double second = Math.max(-map.secondMin(), map.secondMin() + map.rows() * map.cellHeight());
        return Math.hypot(first, second);
    }

    private void line(double x, float[] dash) {
        sample(new Line2D.Double(x + 4, y - 6, x + SAMPLE - 20, y - 6), dash, x);
    }

    private void sample(Shape shape, float[] dash, double x) {
        g.setColor(new java.awt.Color(FluxColours.rgb(0.3)));
        g.fillRect((int) x, (int) y - 20, SAMPLE - 16, 28);
        brush.outlined(shape, dash);
    }

    private void text(double x, double room, String name, String... more) {
        g.setColor(Brush.INK);
        brush.line(name, Brush.bold(17), 11, x + SAMPLE, y, room - SAMPLE);
        for (String value : more) {
            y += 23;
            brush.line(value, Brush.font(17), 11, x + SAMPLE, y, room - SAMPLE);
        }
        y += 38;
    }
}
