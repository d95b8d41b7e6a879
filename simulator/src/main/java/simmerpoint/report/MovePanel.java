package simmerpoint.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.function.ToDoubleFunction;
import simmerpoint.answer.Figures;
import simmerpoint.answer.LevelWords;
import simmerpoint.answer.MoveWords;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.pan.LevelBorder;
import simmerpoint.study.pan.LevelStretch;
import simmerpoint.study.pan.PanMove;
import simmerpoint.study.pan.PanPosition;
import simmerpoint.study.pan.PanResult;
import simmerpoint.units.UnitSystem;

/** One move: bands of heat levels, watts and hottest spot over the offset from where the pan stands. */
final class MovePanel {
    static final Color WATTS = new Color(0x111111);
    static final Color FLUX = new Color(0x0B4F9E);
    static final BasicStroke SOLID = new BasicStroke(3.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    static final BasicStroke DASHED =
            new BasicStroke(2.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {10, 7}, 0);

    private static final BasicStroke DOTTED =
            new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {3, 5}, 0);
    static final BasicStroke BAR = new BasicStroke(4, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);

    private static final int FINE = 300;
    private static final int MARKS = 5;

    private final Graphics2D g;
    private final Brush brush;
    private final PanMove move;
    private final PanResult result;
    private final UnitSystem system;
    private final double mostWatts;
    private final double mostFlux;
    private Rectangle box = new Rectangle();

    MovePanel(Graphics2D g, PanMove move, PanResult result, UnitSystem system, double mostWatts, double mostFlux) {
        this.g = g;
        this.brush = new Brush(g);
        this.move = move;
        this.result = result;
        this.system = system;
        this.mostWatts = mostWatts;
        this.mostFlux = mostFlux;
    }

    void paint(Rectangle where) {
        box = where;
        g.setColor(Brush.INK);
        brush.line(MoveWords.heading(move.move()), Brush.bold(20), 13, box.x, box.y - 14, box.width);
        move.stretches().forEach(this::band);
        move.borders().forEach(this::border);
        leftAxis();
        rightAxis();
        offsets();
        Shape clip = g.getClip();
        g.clip(box);
        curve(p -> p.hottestFlux() / mostFlux, FLUX, DASHED);
        curve(p -> p.absorbed().value() / mostWatts, WATTS, SOLID);
        g.setClip(clip);
        g.setColor(Brush.GREY);
        g.drawRect(box.x, box.y, box.width, box.height);
        marks();
    }

    private double x(double offset) {
        double share = (offset - move.fromMetres()) / (move.toMetres() - move.fromMetres());
        return box.x + share * box.width;
    }

    private double y(double share) {
        return box.y + box.height * (1 - share);
    }

    private void band(LevelStretch stretch) {
        double from = x(stretch.fromMetres());
        double to = x(stretch.toMetres());
        g.setColor(LevelColours.of(stretch.level()));
        g.fill(new java.awt.geom.Rectangle2D.Double(from, box.y, to - from, box.height));
        g.setColor(LevelColours.textOn(stretch.level()));
        if (to - from > 34) {
            brush.centred(LevelWords.of(stretch.level()), Brush.bold(16), (from + to) / 2, box.y + 22, to - from - 6);
        }
        g.setColor(Brush.INK);
    }

    /**
     * The border and, at the foot, a bar over its range with a knot at the border, each level's in its own row. A bar whose
     * end is nowhere stops at the border.
     */
    private void border(LevelBorder border) {
        double place = x(border.offsetMetres());
        g.setColor(Brush.GREY);
        g.draw(new Line2D.Double(place, box.y, place, box.y + (double) box.height));
        double low = Double.isFinite(border.lowMetres()) ? x(border.lowMetres()) : place;
        double high = Double.isFinite(border.highMetres()) ? x(border.highMetres()) : place;
        int row = row(border.before().compareTo(border.after()) > 0 ? border.before() : border.after());
        double foot = box.getMaxY() - 2 - 8.0 * row;
        haloed(new Line2D.Double(low, foot, high, foot), Brush.GREY, BAR, 7);
        g.fill(new java.awt.geom.Ellipse2D.Double(place - 4.5, foot - 4.5, 9, 9));
    }

    private static int row(HeatLevel level) {
        return switch (level) {
            case TOO_COOL, KEEP_WARM -> 1;
            case SIMMER -> 2;
            case BOIL -> 3;
            case FAST_BOIL -> 4;
        };
    }

    private void leftAxis() {
        g.setColor(Brush.INK);
        brush.line("W", Brush.bold(17), 12, box.x - 34.0, box.y - 14, 30);
        for (double mark : NiceSteps.upTo(mostWatts, MARKS)) {
            double at = y(mark / mostWatts);
            g.draw(new Line2D.Double(box.x - 6.0, at, box.x, at));
            brush.lineTo(text(mark), Brush.font(17), 11, box.x - 11.0, at + 6, 66);
        }
    }

    private void rightAxis() {
        g.setColor(FLUX);
        double edge = box.getMaxX();
        brush.lineTo("kW/m\u00b2", Brush.bold(17), 12, edge + 66, box.y - 14, 90);
        for (double mark : NiceSteps.upTo(mostFlux / 1000, MARKS)) {
            double at = y(mark * 1000 / mostFlux);
            g.draw(new Line2D.Double(edge, at, edge + 6, at));
            brush.line(text(mark), Brush.font(17), 11, edge + 11, at + 6, 66);
        }
        g.setColor(Brush.INK);
    }

    private void offsets() {
        double unit = system == UnitSystem.INCH ? 0.0254 : 0.01;
        double foot = box.getMaxY();
        double most = Math.max(-move.fromMetres(), move.toMetres()) / unit;
        for (double mark : NiceSteps.upTo(most, 6)) {
            tick(mark, unit, foot);
            if (mark > 0) {
                tick(-mark, unit, foot);
            }
        }
        String name = system == UnitSystem.INCH ? "in" : "cm";
        double y = foot + 52;
        brush.line("\u2190 " + MoveWords.negative(move.move()), Brush.font(17), 11, box.x, y, box.width * 0.3);
        brush.centred(name + " from where the pan stands", Brush.font(17), box.getCenterX(), y, box.width * 0.36);
        brush.lineTo(
                MoveWords.positive(move.move()) + " \u2192", Brush.font(17), 11, box.getMaxX(), y, box.width * 0.3);
    }

    private void tick(double mark, double unit, double foot) {
        double offset = mark * unit;
        if (!move.reaches(offset)) {
            return;
        }
        double at = x(offset);
        g.draw(new Line2D.Double(at, foot, at, foot + 6));
        brush.centred(text(mark), Brush.font(17), at, foot + 25, 60);
    }

    private static String text(double mark) {
        String text = Figures.rounded(mark, 3);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    private void curve(ToDoubleFunction<PanPosition> share, Color colour, BasicStroke stroke) {
        Path2D path = new Path2D.Double();
        for (int k = 0; k <= FINE; k++) {
            double offset = move.fromMetres() + k * (move.toMetres() - move.fromMetres()) / FINE;
            double at = y(share.applyAsDouble(move.at(offset)));
            if (k == 0) {
                path.moveTo(x(offset), at);
            } else {
                path.lineTo(x(offset), at);
            }
        }
        haloed(path, colour, stroke, 7);
    }

    /** A line with a light seam, so that it shows on pale and on dark bands. */
    private void haloed(Shape line, Color colour, BasicStroke stroke, float seam) {
        g.setColor(new Color(255, 255, 255, 215));
        g.setStroke(new BasicStroke(seam, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(line);
        g.setColor(colour);
        g.setStroke(stroke);
        g.draw(line);
        g.setStroke(new BasicStroke(1));
    }

    private void marks() {
        g.setColor(Brush.INK);
        double here = x(0);
        Shape mark = triangle(here, box.y + 44.0);
        haloed(new Line2D.Double(here, box.y + 46.0, here, box.getMaxY()), Brush.INK, DOTTED, 4);
        haloed(mark, Brush.INK, new BasicStroke(1), 5);
        g.fill(mark);
        result.simmer().filter(p -> p.move() == move.move()).ifPresent(place -> {
            double offset = place.position().offsetMetres();
            double at = y(place.position().absorbed().value() / mostWatts);
            g.setColor(Color.WHITE);
            g.fill(MovePanel.diamond(x(offset), at, 13));
            g.setColor(Brush.INK);
            g.fill(diamond(x(offset), at));
        });
    }

    /** A triangle that points down to (x, y). */
    static Shape triangle(double x, double y) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, y);
        path.lineTo(x - 9, y - 15);
        path.lineTo(x + 9, y - 15);
        path.closePath();
        return path;
    }

    static Shape diamond(double x, double y) {
        return diamond(x, y, 10);
    }

    private static Shape diamond(double x, double y, double r) {
        Path2D path = new Path2D.Double();
        path.moveTo(x, y - r);
        path.lineTo(x + r, y);
        path.lineTo(x, y + r);
        path.lineTo(x - r, y);
        path.closePath();
        return path;
    }
}
