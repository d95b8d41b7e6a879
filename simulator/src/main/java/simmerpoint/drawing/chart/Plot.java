package simmerpoint.drawing.chart;

import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;
import simmerpoint.sampling.Estimate;

/**
 * A frame with a scale to the right and one upwards, and what is plotted in it.
 *
 * @param canvas to draw on
 * @param box the frame
 * @param x figures from its left edge to its right one
 * @param y figures from its lower edge to its upper one
 */
public record Plot(Canvas canvas, Box box, Scale x, Scale y) {
    private static final double TICK = 5;
    private static final double ROOM = 46;
    private static final double FIGURE_DOWN = 4;
    private static final double UNITS_PER_ROW = 34;

    /** A plot of what lies from one figure to another, and upwards from 0. */
    public static Plot of(Canvas canvas, Box box, double first, double last, double top) {
        return new Plot(
                canvas, box, new Scale(first, last, box.x(), box.right()), new Scale(0, top, box.bottom(), box.y()));
    }

    /** The frame itself. */
    public void frame() {
        canvas.draw(Style.FRAME, box);
    }

    /** About as many marks as figures beside the frame can be told apart. */
    public int rows() {
        return (int) Math.max(2, Math.min(6, box.height() / UNITS_PER_ROW));
    }

    /** Grid lines with figures on the left. */
    public void grid() {
        for (double mark : Ticks.upTo(y.last(), rows())) {
            canvas.line(Style.GRID, box.x(), y.at(mark), box.right(), y.at(mark));
            beside(mark, Ticks.text(mark));
        }
    }

    /** Marks with figures on the left. */
    public void left() {
        Ticks.upTo(y.last(), rows()).forEach(mark -> beside(mark, Ticks.text(mark)));
    }

    /** A mark at the left with its words. */
    public void beside(double mark, String words) {
        canvas.line(Style.TICK, box.x() - TICK, y.at(mark), box.x(), y.at(mark));
        canvas.write(Text.at(box.x() - TICK - 3, y.at(mark) + FIGURE_DOWN, words)
                .end()
                .within(ROOM));
    }

    /** Marks of the hottest spot's scale on the right, which ends at {@code top}. */
    public void right(double top) {
        Scale second = new Scale(0, top, y.from(), y.to());
        for (double mark : Ticks.upTo(top, rows())) {
            double at = second.at(mark);
            canvas.line(Style.FLUX_TICK, box.right(), at, box.right() + TICK, at);
            canvas.write(Text.at(box.right() + TICK + 3, at + FIGURE_DOWN, Ticks.text(mark))
                    .in(TextStyle.FLUX)
                    .within(ROOM));
        }
    }

    /** Marks below from one figure to a larger one, if these are the ends of the frame in any measure. */
    public List<Double> columns(double low, double high) {
        return Ticks.spaced(
                low, high, box.width() / (high - low), text -> canvas.metrics().width(text, Text.SIZE, false));
    }

    /** A mark below with its words. */
    public void below(double figure, String words) {
        canvas.line(Style.TICK, x.at(figure), box.bottom(), x.at(figure), box.bottom() + TICK);
        canvas.write(
                Text.at(x.at(figure), box.bottom() + TICK + 12, words).middle().within(ROOM));
    }

    /** Upright lines of a grid with figures above, for bars that lie. */
    public void above() {
        for (double mark : columns(x.first(), x.last())) {
            upright(mark == 0 ? Style.ZERO : Style.GRID, mark);
            canvas.write(
                    Text.at(x.at(mark), box.y() - 7, Ticks.text(mark)).middle().within(ROOM));
        }
    }

    /** A level line. */
    public void level(Style style, double figure) {
        canvas.line(style, box.x(), y.within(figure), box.right(), y.within(figure));
    }

    /** An upright line. */
    public void upright(Style style, double figure) {
        canvas.line(style, x.at(figure), box.y(), x.at(figure), box.bottom());
    }

    /** A curve through points, each x and y. */
    public void curve(Style style, List<double[]> points) {
        canvas.draw(
                style,
                Path.through(
                        points.stream()
                                .map(p -> new double[] {x.at(p[0]), y.within(p[1])})
                                .toList(),
                        false));
    }

    /** The area between two curves, each point x, low and high. */
    public void area(Style style, List<double[]> points) {
        int n = points.size();
        double[] xs = new double[2 * n];
        double[] ys = new double[2 * n];
        for (int k = 0; k < n; k++) {
            double[] p = points.get(k);
            xs[k] = x.at(p[0]);
            ys[k] = y.within(p[1]);
            xs[2 * n - 1 - k] = xs[k];
            ys[2 * n - 1 - k] = y.within(p[2]);
        }
        canvas.draw(style, new Path(List.of(new Path.Part(xs, ys, true))));
    }

    /** A rectangle over the whole height. */
    public void stripe(Style style, double from, double to) {
        canvas.draw(style, new Box(x.at(from), box.y(), x.at(to) - x.at(from), box.height()));
    }

    /** The range of an estimate: so many standard errors to both sides, with caps; none where it would be shorter than a line is wide. */
    public void whisker(Estimate e, double errors, double at, double cap) {
        double from = x.within(e.value() - errors * e.standardError());
        double to = x.within(e.value() + errors * e.standardError());
        if (to - from > 2) {
            canvas.draw(
                    Style.WHISKER,
                    Path.open(from, at, to, at)
                            .and(Path.open(from, at - cap, from, at + cap))
                            .and(Path.open(to, at - cap, to, at + cap)));
        }
    }
}
