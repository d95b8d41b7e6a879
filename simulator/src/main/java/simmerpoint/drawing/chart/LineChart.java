package simmerpoint.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;

/** Curves over a grid, from 0 upwards, with what their samples mean below. */
public final class LineChart implements Drawing {
    private static final double HEAD = 22;
    private static final double LEFT = 42;
    private static final double RIGHT = 8;
    private static final double MARKS = 20;
    private static final double NAME = 16;
    private static final double LOW = 128;
    private static final double DOT = 3;
    private static final double LEVEL_WORDS = 0.45;

    private final String title;
    private final String name;
    private final double first;
    private final double last;
    private final double top;
    private final List<Consumer<Plot>> lines = new ArrayList<>();
    private final List<Consumer<Plot>> curves = new ArrayList<>();
    private final List<Consumer<Plot>> notes = new ArrayList<>();
    private final Legend legend = new Legend();
    private boolean hasKey;
    private double plotHeight = LOW;

    /**
     * An empty chart.
     *
     * @param title stands above it
     * @param name of the axis below
     * @param first figure at its left edge
     * @param last figure at its right edge
     * @param top figure at its upper edge
     */
    public LineChart(String title, String name, double first, double last, double top) {
        this.title = title;
        this.name = name;
        this.first = first;
        this.last = last;
        this.top = top;
    }

    /** Makes the plot so high, units. */
    public LineChart tall(double height) {
        plotHeight = height;
        return this;
    }

    /** Adds a curve through points, each x and y. */
    public LineChart curve(Style style, List<double[]> points) {
        curves.add(plot -> plot.curve(style, points));
        return this;
    }

    /** Adds a curve and tells below what it is. */
    public LineChart curve(Style style, List<double[]> points, String words) {
        legend.line(style.sample(), words);
        hasKey = true;
        return curve(style, points);
    }

    /** Adds dots at points, each x and y, and tells below what they are. */
    public LineChart dots(List<double[]> points, String words) {
        legend.with(2 * DOT, (canvas, x, y) -> canvas.draw(Style.PLAIN_MARK, new Circle(x + DOT, y - 4, DOT)), words);
        hasKey = true;
        curves.add(plot -> points.forEach(p -> plot.canvas()
                .draw(Style.CURVE_MARK, new Circle(plot.x().at(p[0]), plot.y().within(p[1]), DOT))));
        return this;
    }

    /** Adds a level line with words below it at the left. */
    public LineChart level(double figure, String words) {
        lines.add(plot -> plot.level(Style.PRESENT, figure));
        notes.add(plot -> plot.canvas()
                .write(Text.at(plot.box().x() + 6, plot.y().within(figure) + 14, words)
                        .in(TextStyle.ON_CHART)
                        .within(LEVEL_WORDS * plot.box().width())));
        return this;
    }

    /** Adds an upright line with words beside its foot. */
    public LineChart upright(double figure, String words) {
        lines.add(plot -> plot.upright(Style.PRESENT, figure));
        notes.add(plot -> {
            double x = plot.x().at(figure);
            boolean room = plot.box().right() - x > plot.canvas().metrics().width(words, Text.SIZE, false) + 8;
            Text text = Text.at(room ? x + 6 : x - 6, plot.box().bottom() - 8, words)
                    .in(TextStyle.ON_CHART);
            plot.canvas().write(room ? text : text.end());
        });
        return this;
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEAD + plotHeight + MARKS + NAME + (hasKey ? legend.height(width - LEFT - RIGHT, metrics) : 0) + 6;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        Box inner = new Box(box.x() + LEFT, box.y() + HEAD, box.width() - LEFT - RIGHT, plotHeight);
        Plot plot = Plot.of(canvas, inner, first, last, top);
        canvas.write(
                Text.at(inner.x(), inner.y() - 8, title).in(TextStyle.HEADING).within(inner.width()));
        canvas.draw(Style.CHART_GROUND, inner);
        plot.grid();
        for (double mark : plot.columns(first, last)) {
            plot.upright(Style.GRID, mark);
            plot.below(mark, Ticks.text(mark));
        }
        lines.forEach(line -> line.accept(plot));
        canvas.clip(inner, () -> curves.forEach(curve -> curve.accept(plot)));
        notes.forEach(note -> note.accept(plot));
        plot.frame();
        double y = inner.bottom() + MARKS + 12;
        canvas.write(
                Text.at(inner.middleX(), y, name).in(TextStyle.SOFT).middle().within(inner.width()));
        if (hasKey) {
            legend.draw(canvas, new Box(inner.x(), y + 5, inner.width(), 0));
        }
    }
}
