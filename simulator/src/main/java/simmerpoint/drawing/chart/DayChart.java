package simmerpoint.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.day.DayHour;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.HourLight;

/** A day with sun: watts before bands of the heat levels, below them the sun's height and the beam, over the local clock. */
public final class DayChart implements Drawing {
    private static final double WIDE = 480;
    private static final double HEAD = 22;
    private static final double FOOT = 22;
    private static final double LEFT = 42;
    private static final double RIGHT = 22;
    private static final double LABEL = 48;
    /** Room below 0 as a share of what is above. */
    private static final double BELOW = 0.12;

    private static final double HEADROOM = 1.12;
    private static final double MOST_DEGREES = 90;

    private final DayResult result;
    private final HourAxis axis;

    /** Of a day whose curve is not empty. */
    public DayChart(DayResult result) {
        this.result = result;
        List<DayHour> all = result.curve();
        axis = HourAxis.around(all.get(0).time(), all.get(all.size() - 1).time());
    }

    private static double watts(double width) {
        return width < WIDE ? 190 : 300;
    }

    private static double small(double width) {
        return width < WIDE ? 62 : 110;
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return 3 * (HEAD + FOOT) + watts(width) + 2 * small(width);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double small = small(box.width());
        double y = box.y();
        watts(belowZero(plot(canvas, box, y, watts(box.width()), mostWatts())));
        y += HEAD + watts(box.width()) + FOOT;
        elevation(plot(canvas, box, y, small, MOST_DEGREES / HEADROOM));
        y += HEAD + small + FOOT;
        beam(plot(canvas, box, y, small, mostBeam()));
    }

    private static Plot plot(Canvas canvas, Box box, double y, double height, double most) {
        Box inner = new Box(box.x() + LEFT, y + HEAD, box.width() - LEFT - RIGHT, height);
        return Plot.of(canvas, inner, 0, 1, Math.max(1, most * HEADROOM));
    }

    /** The same with some room below 0, where a pan is that cannot hold the temperature of its cooking power. */
    private static Plot belowZero(Plot plot) {
        Box inner = plot.box();
        double top = plot.y().last();
        return new Plot(plot.canvas(), inner, plot.x(), new Scale(-BELOW * top, top, inner.bottom(), inner.y()));
    }

    /** The strongest beam by any model of a clear sky, W/m². */
    private double mostBeam() {
        return result.curve().stream()
                .mapToDouble(h -> h.beam().highWattsPerSquareMetre())
                .max()
                .orElse(0);
    }

    /** The most cooking power, at the upper end of its range, W. */
    private double mostWatts() {
        return result.curve().stream()
                .flatMap(h -> h.light().stream())
                .mapToDouble(light -> light.power().high())
                .max()
                .orElse(0);
    }

    private void watts(Plot plot) {
        for (List<DayHour> run : runs()) {
            for (HeatLevel level : HeatLevel.values()) {
                area(plot, Style.of(level), run, h -> begins(h, level), h -> ends(h, level));
            }
        }
        axes(plot, "Cooking power, W");
        for (List<DayHour> run : runs()) {
            area(
                    plot,
                    Style.DOUBT,
                    run,
                    h -> light(h).power().low(),
                    h -> light(h).power().high());
            curve(plot, Style.WATTS_CURVE, Style.CURVE_MARK, run, DayHour::cookingPowerWatts);
        }
        plot.level(Style.ZERO, 0);
        plot.frame();
    }

    private void elevation(Plot plot) {
        axes(plot, "Sun above the horizon, degrees");
        curve(plot, Style.PLAIN_CURVE, Style.PLAIN_MARK, result.curve(), h -> Math.toDegrees(h.elevationRadians()));
        plot.frame();
    }

    private void beam(Plot plot) {
        axes(plot, "Beam, W/m²");
        area(
                plot,
                Style.SPREAD,
                result.curve(),
                h -> h.beam().lowWattsPerSquareMetre(),
                h -> h.beam().highWattsPerSquareMetre());
        curve(
                plot,
                Style.PLAIN_CURVE,
                Style.PLAIN_MARK,
                result.curve(),
                h -> h.beam().likelyWattsPerSquareMetre());
        plot.frame();
    }

    private void axes(Plot plot, String title) {
        Box box = plot.box();
        plot.canvas()
                .write(Text.at(box.x(), box.y() - 8, title)
                        .in(TextStyle.HEADING)
                        .within(box.width()));
        plot.grid();
        int step = axis.step(box.width(), LABEL);
        for (int k = 0; k < axis.hours().size(); k++) {
            double share = axis.share(axis.hours().get(k));
            plot.upright(Style.GRID, share);
            if (k % step == 0) {
                plot.below(share, axis.label(k));
            }
        }
    }

    private double x(DayHour hour) {
        return axis.share(hour.time());
    }

    private void area(
            Plot plot, Style style, List<DayHour> run, ToDoubleFunction<DayHour> low, ToDoubleFunction<DayHour> high) {
        if (run.size() > 1) {
            plot.area(
                    style,
                    run.stream()
                            .map(h -> new double[] {x(h), low.applyAsDouble(h), high.applyAsDouble(h)})
                            .toList());
        }
    }

    /** A curve with dots at the hours that were traced. */
    private void curve(Plot plot, Style style, Style dot, List<DayHour> run, ToDoubleFunction<DayHour> figure) {
        plot.curve(
                style,
                run.stream()
                        .map(h -> new double[] {x(h), figure.applyAsDouble(h)})
                        .toList());
        for (DayHour hour : result.hours()) {
            if (run.contains(hour)) {
                plot.canvas()
                        .draw(dot, new Circle(plot.x().at(x(hour)), plot.y().within(figure.applyAsDouble(hour)), 3));
            }
        }
    }

    /** Stretches of the day without a gap in the light. */
    private List<List<DayHour>> runs() {
        List<List<DayHour>> runs = new ArrayList<>();
        List<DayHour> run = new ArrayList<>();
        for (DayHour hour : result.curve()) {
            if (hour.light().isPresent()) {
                run.add(hour);
            } else if (!run.isEmpty()) {
                runs.add(run);
                run = new ArrayList<>();
            }
        }
        if (!run.isEmpty()) {
            runs.add(run);
        }
        return runs;
    }

    private static HourLight light(DayHour hour) {
        return hour.light().orElseThrow();
    }

    private static double begins(DayHour hour, HeatLevel level) {
        return light(hour).asGiven().begins(level);
    }

    /** Watts at which the next level begins. */
    private static double ends(DayHour hour, HeatLevel level) {
        return switch (level) {
            case TOO_COOL -> begins(hour, HeatLevel.KEEP_WARM);
            case KEEP_WARM -> begins(hour, HeatLevel.SIMMER);
            case SIMMER -> begins(hour, HeatLevel.BOIL);
            case BOIL -> begins(hour, HeatLevel.FAST_BOIL);
            case FAST_BOIL -> Double.POSITIVE_INFINITY;
        };
    }
}
