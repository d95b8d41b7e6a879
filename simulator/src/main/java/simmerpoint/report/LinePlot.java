package simmerpoint.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.List;
import simmerpoint.answer.Figures;
import simmerpoint.drawing.chart.Ticks;

/** A frame with round marks on both axes, and lines in it. */
final class LinePlot {
    private static final Color GRID = new Color(0xD0D3D8);
    private static final BasicStroke THIN = new BasicStroke(1);
    private static final BasicStroke LEVEL =
            new BasicStroke(1.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {3, 5}, 0);
    private static final int PIXELS_PER_COLUMN = 90;
    private static final int PIXELS_PER_ROW = 56;

    private final Graphics2D g;
    private final Brush brush;
    private final Rectangle box;
    private final double from;
    private final double to;
    private final double top;

    /** A plot in {@code box} of what lies from {@code from} to {@code to} and from 0 to {@code top}. */
    LinePlot(Graphics2D g, Rectangle box, double from, double to, double top) {
        this.g = g;
        this.brush = new Brush(g);
        this.box = box;
        this.from = from;
        this.to = to;
        this.top = top;
    }

    private double x(double value) {
        return box.x + (value - from) / (to - from) * box.width;
    }

    private double y(double value) {
        return box.y + box.height * (1 - value / top);
    }

    /** Title, grid, marks and the name of the axis below. */
    void frame(String title, String below) {
        g.setColor(Brush.INK);
        brush.line(title, Brush.bold(20), 12, box.x, box.y - 14, box.width);
        g.setStroke(THIN);
        for (double mark : Ticks.upTo(top, Math.max(2, box.height / PIXELS_PER_ROW))) {
            row(mark);
        }
        double most = Math.max(-from, to);
        int wanted = Math.max(2, (int) (box.width * most / (to - from) / PIXELS_PER_COLUMN));
        for (double mark : Ticks.upTo(most, wanted)) {
            column(mark);
            if (mark > 0) {
                column(-mark);
            }
        }
        g.setColor(Brush.GREY);
        g.drawRect(box.x, box.y, box.width, box.height);
        g.setColor(Brush.INK);
        brush.centred(below, Brush.font(17), box.getCenterX(), box.getMaxY() + 52, box.width);
    }

    private void row(double mark) {
        double at = y(mark);
        g.setColor(GRID);
        g.draw(new Line2D.Double(box.x, at, box.getMaxX(), at));
        g.setColor(Brush.INK);
        brush.lineTo(text(mark), Brush.font(17), 11, box.x - 10.0, at + 6, 66);
    }

    private void column(double mark) {
        if (mark < from - 1e-9 || mark > to + 1e-9) {
            return;
        }
        double at = x(mark);
        g.setColor(GRID);
        g.draw(new Line2D.Double(at, box.y, at, box.getMaxY()));
        g.setColor(Brush.INK);
        brush.centred(text(mark), Brush.font(17), at, box.getMaxY() + 25, 60);
    }

    /** A mark's number without noughts at its end. */
    static String text(double mark) {
        String text = mark == 0 ? "0" : Figures.rounded(mark, 3);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    /** A dotted level line with words over it at the left. */
    void level(double value, String words) {
        g.setColor(Brush.INK);
        g.setStroke(LEVEL);
        g.draw(new Line2D.Double(box.x, y(value), box.getMaxX(), y(value)));
        g.setStroke(THIN);
        brush.line(words, Brush.font(16), 11, box.x + 8.0, y(value) + 20, box.width * 0.4);
    }

    /** A dotted upright line with words beside its foot. */
    void upright(double value, String words) {
        g.setColor(Brush.INK);
        g.setStroke(LEVEL);
        g.draw(new Line2D.Double(x(value), box.y, x(value), box.getMaxY()));
        g.setStroke(THIN);
        brush.line(words, Brush.font(16), 11, x(value) + 8, box.getMaxY() - 12, box.getMaxX() - x(value) - 12);
    }

    /** A line through points (x, y) with a light seam, broken nowhere. */
    void line(List<double[]> points, Color colour, BasicStroke stroke) {
        if (points.isEmpty()) {
            return;
        }
        Path2D path = new Path2D.Double();
        path.moveTo(x(points.get(0)[0]), y(points.get(0)[1]));
        points.stream().skip(1).forEach(p -> path.lineTo(x(p[0]), y(p[1])));
        Shape clip = g.getClip();
        g.clip(box);
        g.setColor(new Color(255, 255, 255, 215));
        g.setStroke(new BasicStroke(7, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(path);
        g.setColor(colour);
        g.setStroke(stroke);
        g.draw(path);
        g.setStroke(THIN);
        g.setClip(clip);
    }
}
