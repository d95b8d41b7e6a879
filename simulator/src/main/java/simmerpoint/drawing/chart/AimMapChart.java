package simmerpoint.drawing.chart;

import java.util.List;
import java.util.Optional;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.ColourScheme;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.Ink;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Raster;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.study.aim.AimMap;

/** One map of watts over two angles, square, with the line of the tolerance and a way over it. */
final class AimMapChart implements Drawing {
    private static final double HEAD = 44;
    private static final double FOOT = 44;
    private static final double LEFT = 42;
    private static final double RIGHT = 10 + ColourBar.WIDTH;
    private static final int PIXELS = 480;
    private static final int MARKS = 2;
    private static final int OPAQUE = 0xFF000000;

    private final AimField field;
    private final double top;
    private final Words words;
    private final double tolerated;
    private final Optional<Way> way;
    private final boolean bar;

    /**
     * What a map is called.
     *
     * @param title above it
     * @param up what upwards means
     * @param right what to the right means
     */
    record Words(String title, String up, String right) {}

    /**
     * A way over a map from its middle.
     *
     * @param points up and side, rad
     * @param dot one of them
     * @param words say what it is
     */
    record Way(List<double[]> points, double[] dot, String words) {}

    /**
     * A map.
     *
     * @param map its watts
     * @param top watts of the last colour
     * @param tolerated watts along its line
     * @param words its names
     * @param way over it, if any
     * @param bar whether the scale of colours stands at its right
     */
    AimMapChart(AimMap map, double top, double tolerated, Words words, Optional<Way> way, boolean bar) {
        field = new AimField(map);
        this.top = top;
        this.tolerated = tolerated;
        this.words = words;
        this.way = way;
        this.bar = bar;
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEAD + width - LEFT - RIGHT + FOOT;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        Box inner = box.inside(LEFT, HEAD, RIGHT, FOOT);
        Plot plot = new Plot(
                canvas,
                inner,
                new Scale(field.first(), field.last(), inner.x(), inner.right()),
                new Scale(field.first(), field.last(), inner.bottom(), inner.y()));
        canvas.write(Text.at(inner.x(), box.y() + 14, words.title())
                .in(TextStyle.HEADING)
                .size(14)
                .within(inner.width()));
        canvas.write(Text.at(inner.x(), inner.y() - 8, "\u2191 " + words.up()).within(inner.width()));
        double foot = inner.bottom() + 36;
        canvas.write(Text.at(inner.x(), foot, "degrees").in(TextStyle.SOFT).within(0.4 * inner.width()));
        canvas.write(
                Text.at(inner.right(), foot, words.right() + " \u2192").end().within(0.6 * inner.width()));
        canvas.image(colours(), inner);
        canvas.clip(inner, () -> {
            canvas.draw(Style.OUTLINE, field.isoline(tolerated, inner));
            MapMarks.cross(canvas, plot.x().at(0), plot.y().at(0), 8);
            way.ifPresent(w -> way(plot, w));
        });
        plot.frame();
        axes(plot);
        if (bar) {
            new ColourBar(top, "W")
                    .draw(canvas, new Box(inner.right() + 14, inner.y(), ColourBar.WIDTH, inner.height()));
        }
    }

    private Raster colours() {
        int[] argb = new int[PIXELS * PIXELS];
        int missing = ColourScheme.PRINT.argb(Ink.MISSING);
        for (int j = 0; j < PIXELS; j++) {
            for (int i = 0; i < PIXELS; i++) {
                double watts = field.at(angle(PIXELS - 1 - j), angle(i));
                argb[j * PIXELS + i] = Double.isNaN(watts) ? missing : OPAQUE | FluxColours.rgb(watts / top);
            }
        }
        return new Raster(PIXELS, PIXELS, argb);
    }

    private double angle(int pixel) {
        return field.first() + (pixel + 0.5) / PIXELS * (field.last() - field.first());
    }

    private void axes(Plot plot) {
        double most = Math.toDegrees(field.last());
        for (double mark : Ticks.between(-most, most, 2 * MARKS)) {
            plot.below(Math.toRadians(mark), Ticks.text(mark));
            plot.beside(Math.toRadians(mark), Ticks.text(mark));
        }
    }

    private static void way(Plot plot, Way way) {
        int n = way.points().size() + 1;
        double[] xs = new double[n];
        double[] ys = new double[n];
        xs[0] = plot.x().at(0);
        ys[0] = plot.y().at(0);
        for (int k = 1; k < n; k++) {
            xs[k] = plot.x().at(way.points().get(k - 1)[1]);
            ys[k] = plot.y().at(way.points().get(k - 1)[0]);
        }
        plot.canvas().draw(Style.OUTLINE_DASHED, Path.through(xs, ys));
        plot.canvas()
                .draw(Style.DOT, new Circle(plot.x().at(way.dot()[1]), plot.y().at(way.dot()[0]), 3.6));
        MapMarks.plate(
                plot.canvas(),
                Text.at(plot.box().x() + 10, plot.box().bottom() - 11, way.words())
                        .within(plot.box().width() - 20));
    }
}
