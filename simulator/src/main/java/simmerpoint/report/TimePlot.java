package simmerpoint.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.List;
import java.util.function.ToDoubleFunction;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.study.day.DayHour;

/** One strip of a day's picture: a figure over the local clock. */
final class TimePlot {
    private static final Color GRID = new Color(0xD0D3D8);
    private static final int PIXELS_PER_MARK = 62;

    private final Graphics2D g;
    private final Brush brush;
    private final Rectangle box;
    private final HourAxis axis;
    private final double top;

    /** A strip in {@code box} from 0 to {@code top}. */
    TimePlot(Graphics2D g, Rectangle box, HourAxis axis, double top) {
        this.g = g;
        this.brush = new Brush(g);
        this.box = box;
        this.axis = axis;
        this.top = top;
    }

    double x(DayHour hour) {
        return box.x + axis.share(hour.time()) * box.width;
    }

    double y(double value) {
        return box.y + box.height * (1 - Math.max(0, Math.min(1, value / top)));
    }

    /** The strip's name above it. */
    void title(String text) {
        g.setColor(Brush.INK);
        brush.line(text, Brush.bold(19), 12, box.x, box.y - 12, box.width);
    }

    /** Grid and marks. */
    void frame(boolean hoursBelow) {
        g.setStroke(new BasicStroke(1));
        for (double mark : Ticks.upTo(top, Math.max(2, box.height / PIXELS_PER_MARK))) {
            int at = (int) Math.round(y(mark));
            g.setColor(GRID);
            g.drawLine(box.x, at, box.x + box.width, at);
            g.setColor(Brush.INK);
            brush.lineTo(FigureFormat.fixed(mark, 0), Brush.font(17), 10, box.x - 10, at + 6, 70);
        }
        for (int k = 0; k < axis.hours().size(); k++) {
            int at = (int) Math.round(box.x + axis.share(axis.hours().get(k)) * box.width);
            g.setColor(GRID);
            g.drawLine(at, box.y, at, box.y + box.height);
            g.setColor(Brush.INK);
            if (hoursBelow) {
                brush.centred(axis.label(k), Brush.font(17), at, box.y + box.height + 24, axis.room(box.width));
            }
        }
        g.setColor(Brush.GREY);
        g.drawRect(box.x, box.y, box.width, box.height);
    }

    /** Fills between two curves. */
    void band(List<DayHour> hours, ToDoubleFunction<DayHour> low, ToDoubleFunction<DayHour> high, Color colour) {
        if (hours.size() < 2) {
            return;
        }
        Path2D path = new Path2D.Double();
        for (int k = 0; k < hours.size(); k++) {
            point(path, k == 0, x(hours.get(k)), y(low.applyAsDouble(hours.get(k))));
        }
        for (int k = hours.size() - 1; k >= 0; k--) {
            point(path, false, x(hours.get(k)), y(high.applyAsDouble(hours.get(k))));
        }
        path.closePath();
        Shape clip = g.getClip();
        g.clip(box);
        g.setColor(colour);
        g.fill(path);
        g.setClip(clip);
    }

    /** A curve with dots at the hours. */
    void curve(List<DayHour> hours, ToDoubleFunction<DayHour> value, List<DayHour> dots) {
        Path2D path = new Path2D.Double();
        for (int k = 0; k < hours.size(); k++) {
            point(path, k == 0, x(hours.get(k)), y(value.applyAsDouble(hours.get(k))));
        }
        brush.outlined(path, null);
        g.setColor(Brush.INK);
        g.setStroke(new BasicStroke(3f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        g.draw(path);
        for (DayHour hour : dots) {
            g.fill(new java.awt.geom.Ellipse2D.Double(x(hour) - 4.5, y(value.applyAsDouble(hour)) - 4.5, 9, 9));
        }
        g.setStroke(new BasicStroke(1));
    }

    private static void point(Path2D path, boolean first, double x, double y) {
        if (first) {
            path.moveTo(x, y);
        } else {
            path.lineTo(x, y);
        }
    }
}
