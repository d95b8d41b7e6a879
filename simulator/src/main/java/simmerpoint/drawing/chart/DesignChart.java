package simmerpoint.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import simmerpoint.answer.design.DesignAnswer;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.study.design.DesignChoice;
import simmerpoint.study.design.DesignResult;
import simmerpoint.study.design.DishCandidate;
import simmerpoint.units.UnitSystem;

/** The trade between panels and diameter: one stair for each amount of watts, dots for the dishes that were traced anew. */
public final class DesignChart implements Drawing {
    private static final double HEAD = 22;
    private static final double FOOT = 40;
    private static final double LEFT = 42;
    private static final double RIGHT = 10;
    private static final double SHAPE = 0.5;
    private static final double LABEL_WIDTH = 136;
    private static final double LABEL_HEIGHT = 19;

    private final DesignResult result;
    private final UnitSystem units;
    private final Legend legend = new Legend();
    private final double mostPanels;
    private final double least;
    private final double most;

    /** Of a result, lengths in those units. */
    public DesignChart(DesignResult result, UnitSystem units) {
        this.result = result;
        this.units = units;
        List<DishCandidate> all = Stream.concat(
                        result.front().stream().map(DesignChoice::candidate),
                        result.fronts().stream().flatMap(f -> f.candidates().stream()))
                .toList();
        mostPanels =
                1.08 * all.stream().mapToInt(s -> s.layout().panels()).max().orElse(10);
        double low =
                all.stream().mapToInt(DishCandidate::diameterCentimetres).min().orElse(50);
        double high =
                all.stream().mapToInt(DishCandidate::diameterCentimetres).max().orElse(100);
        double room = Math.max(5, 0.12 * (high - low));
        least = shown(Math.max(0, low - room));
        most = shown(high + room);
        for (int k = 0; k < result.fronts().size(); k++) {
            DesignResult.Front front = result.fronts().get(k);
            legend.line(
                    Style.curve(k).sample(),
                    FigureFormat.rounded(front.watts(), 3) + " W"
                            + (front.candidates().isEmpty() ? " (none within the limits)" : ""));
        }
    }

    private double shown(double centimetres) {
        return centimetres * 0.01 / units.shortUnitMetres();
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEAD + SHAPE * (width - LEFT - RIGHT) + FOOT + legend.height(width - LEFT - RIGHT, metrics);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        Box inner = new Box(
                box.x() + LEFT, box.y() + HEAD, box.width() - LEFT - RIGHT, SHAPE * (box.width() - LEFT - RIGHT));
        Plot plot = new Plot(
                canvas,
                inner,
                new Scale(0, mostPanels, inner.x(), inner.right()),
                new Scale(least, most, inner.bottom(), inner.y()));
        canvas.draw(Style.CHART_GROUND, inner);
        axes(plot);
        canvas.clip(inner, () -> {
            for (int k = 0; k < result.fronts().size(); k++) {
                stair(plot, k, result.fronts().get(k));
            }
        });
        plot.frame();
        labels(plot);
        result.front().forEach(choice -> canvas.draw(Style.CURVE_DOT, new Circle(x(plot, choice), y(plot, choice), 5)));
        legend.draw(canvas, new Box(inner.x(), inner.bottom() + FOOT, inner.width(), 0));
    }

    private void axes(Plot plot) {
        Box box = plot.box();
        for (double mark : plot.columns(0, mostPanels)) {
            plot.upright(Style.GRID, mark);
            plot.below(mark, Ticks.text(mark));
        }
        for (double mark : Ticks.between(least, most, plot.rows())) {
            plot.level(Style.GRID, mark);
            plot.beside(mark, Ticks.text(mark));
        }
        plot.canvas()
                .write(Text.at(box.x(), box.y() - 8, "diameter, " + (units == UnitSystem.METRIC ? "cm" : "in"))
                        .in(TextStyle.HEADING));
        plot.canvas()
                .write(Text.at(box.middleX(), box.bottom() + 33, "panels to cut")
                        .in(TextStyle.HEADING)
                        .middle());
    }

    private void stair(Plot plot, int k, DesignResult.Front front) {
        if (front.candidates().isEmpty()) {
            return;
        }
        List<double[]> points = new ArrayList<>();
        double at = plot.box().y();
        for (DishCandidate candidate : front.candidates()) {
            double x = plot.x().at(candidate.layout().panels());
            points.add(new double[] {x, at});
            at = plot.y().at(shown(candidate.diameterCentimetres()));
            points.add(new double[] {x, at});
        }
        points.add(new double[] {plot.box().right(), at});
        plot.canvas().draw(Style.curve(k), Path.through(points, false));
    }

    private static double x(Plot plot, DesignChoice choice) {
        return plot.x().at(choice.candidate().layout().panels());
    }

    private double y(Plot plot, DesignChoice choice) {
        return plot.y().at(shown(choice.candidate().diameterCentimetres()));
    }

    /** Labels of the dots, where they do not cover the label before. */
    private void labels(Plot plot) {
        double lastX = Double.NEGATIVE_INFINITY;
        double lastY = Double.NEGATIVE_INFINITY;
        for (DesignChoice choice : result.front()) {
            double x = x(plot, choice);
            double y = y(plot, choice);
            if (Math.abs(x - lastX) > LABEL_WIDTH || Math.abs(y - lastY) > LABEL_HEIGHT) {
                label(plot, choice, x, y);
                lastX = x;
                lastY = y;
            }
        }
    }

    private static void label(Plot plot, DesignChoice choice, double x, double y) {
        String aim = choice.again()
                .minutes()
                .map(e -> ", aim every " + SkyWords.minutes(e.value()))
                .orElse("");
        Text text = Text.at(0, y - 7, DesignAnswer.cut(choice.candidate().layout()) + aim)
                .in(TextStyle.ON_CHART)
                .size(11);
        double left =
                Math.min(x + 7, plot.box().right() - plot.canvas().metrics().width(text) - 4);
        plot.canvas().write(text.moved(left, y - 7));
    }
}
