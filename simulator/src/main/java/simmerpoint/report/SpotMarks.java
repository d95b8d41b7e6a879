package simmerpoint.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Optional;
import simmerpoint.answer.Figures;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;
import simmerpoint.target.Spot;
import simmerpoint.units.UnitSystem;

/** What is drawn over the map: the target's outline, circles of 50 and 90 %, the hottest spot, a scale bar. */
final class SpotMarks {
    static final float[] DASHED = {12, 7};
    static final float[] DOTTED = {3, 5};
    private static final double ROOM_FOR_TAG = 46;
    private static final double INCH = 0.0254;

    private final Graphics2D g;
    private final TraceResult result;
    private final Figures figures;
    private final Rectangle box;
    private final FluxPicture.Look look;
    private FluxMap map;

    SpotMarks(Graphics2D g, TraceResult result, Figures figures, Rectangle box, FluxPicture.Look look) {
        this.g = g;
        this.result = result;
        this.figures = figures;
        this.box = box;
        this.look = look;
        this.map = result.maps().crossing();
    }

    void paint() {
        Shape clip = g.getClip();
        g.clip(box);
        Brush brush = new Brush(g);
        brush.outlined(circle(result.scenario().target().radiusMetres()), null);
        Spot spot = result.spot();
        radius(brush, spot.radius50(), DASHED, "50 %", -0.30 * Math.PI);
        radius(brush, spot.radius90(), DOTTED, "90 %", -0.20 * Math.PI);
        if (result.ledger().caught().value() > 0) {
            brush.outlined(cross(x(spot.peakY()), y(spot.peakX())), null);
        }
        scaleBar(brush);
        g.setClip(clip);
    }

    /** Only the target's outline, over another map in the same frame. */
    void outline(FluxMap other) {
        map = other;
        Shape clip = g.getClip();
        g.clip(box);
        new Brush(g).outlined(circle(result.scenario().target().radiusMetres()), null);
        g.setClip(clip);
    }

    private void radius(Brush brush, Optional<Estimate> radius, float[] dash, String tag, double direction) {
        if (radius.isEmpty() || !Double.isFinite(radius.get().value())) {
            return;
        }
        double r = radius.get().value();
        brush.outlined(circle(r), dash);
        double pixels = r * scale();
        double tagX = x(0) + pixels * Math.cos(direction) - 18;
        double tagY = y(0) + pixels * Math.sin(direction) + 6;
        if (pixels > ROOM_FOR_TAG && box.contains(tagX - 6, tagY - 22, 60, 34)) {
            brush.plate(tag, Brush.font(15), tagX, tagY);
        }
    }

    private Shape circle(double radius) {
        double r = Math.min(radius * scale(), 1e5);
        return new Ellipse2D.Double(x(0) - r, y(0) - r, 2 * r, 2 * r);
    }

    static Shape cross(double x, double y) {
        Path2D path = new Path2D.Double();
        path.append(new Line2D.Double(x - 11, y, x + 11, y), false);
        path.append(new Line2D.Double(x, y - 11, x, y + 11), false);
        return path;
    }

    /** Pixels per metre. */
    private double scale() {
        return box.width / (map.rows() * map.cellHeight());
    }

    private double x(double second) {
        return box.x + (second - map.secondMin()) * scale();
    }

    private double y(double first) {
        double along = (first - map.firstMin()) * box.height / (map.columns() * map.cellWidth());
        return look == FluxPicture.Look.FIRST_DOWN ? box.y + along : box.y + box.height - along;
    }

    private void scaleBar(Brush brush) {
        double unit = figures.system() == UnitSystem.INCH ? INCH : 0.01;
        String name = figures.system() == UnitSystem.INCH ? "in" : "cm";
        double count = Ticks.below(0.25 * box.width / scale() / unit);
        double pixels = count * unit * scale();
        double left = box.x + 22;
        double bottom = box.y + box.height - 22.0;
        String text = Figures.rounded(count, 1) + "\u00a0" + name;
        g.setColor(new Color(0, 0, 0, 170));
        g.fillRoundRect((int) left - 10, (int) bottom - 36, (int) Math.max(pixels, 70) + 20, 48, 8, 8);
        g.setColor(Color.WHITE);
        g.fillRect((int) left, (int) bottom - 4, (int) pixels, 6);
        brush.line(text, Brush.bold(17), 10, left, bottom - 12, Math.max(pixels, 70));
        g.setColor(Brush.INK);
    }
}
