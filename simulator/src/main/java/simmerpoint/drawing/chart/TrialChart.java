package simmerpoint.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.trial.fit.FittedCurve;
import simmerpoint.units.UnitSystem;

/** One log beside the model: water measured, expected and fitted over the minutes, and below it measured less fitted. */
public final class TrialChart implements Drawing {
    private static final double HEAD = 22;
    private static final double LEFT = 42;
    private static final double RIGHT = 8;
    private static final double HIGH = 200;
    private static final double BETWEEN = 30;
    private static final double LOW = 70;
    private static final double FOOT = 36;
    private static final double DOT = 2.4;
    private static final double MINUTE = 60;
    private static final double LEAST_OFF = 1;
    private static final double HEADROOM = 1.08;

    private final FittedCurve curve;
    private final boolean fahrenheit;
    private final String title;
    private final Legend legend = new Legend()
            .with(10, (canvas, x, y) -> canvas.draw(Style.PLAIN_MARK, new Circle(x + 5, y - 4, DOT)), "measured")
            .line(Style.WATTS_CURVE.sample(), "fitted")
            .line(Style.CURVE_2.sample(), "expected")
            .swatch(Style.SPREAD, "four in five such cookers");

    /** The chart of one log. */
    public TrialChart(FittedCurve curve, UnitSystem units) {
        this.curve = curve;
        fahrenheit = units == UnitSystem.INCH;
        title = curve.log().file().getFileName() + ": water, " + (fahrenheit ? "\u00b0F" : "\u00b0C");
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEAD + HIGH + BETWEEN + LOW + FOOT + legend.height(width - LEFT - RIGHT, metrics);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        Box upper = new Box(box.x() + LEFT, box.y() + HEAD, box.width() - LEFT - RIGHT, HIGH);
        Box lower = new Box(upper.x(), upper.bottom() + BETWEEN, upper.width(), LOW);
        double last = curve.seconds()[curve.seconds().length - 1] / MINUTE;
        heading(canvas, upper, title);
        temperatures(canvas, upper, last);
        heading(canvas, lower, "measured less fitted, " + (fahrenheit ? "\u00b0F" : "K"));
        residuals(canvas, lower, last);
        double y = lower.bottom() + 31;
        canvas.write(Text.at(lower.middleX(), y, "minutes").in(TextStyle.SOFT).middle());
        legend.draw(canvas, new Box(lower.x(), y + 5, lower.width(), 0));
    }

    private static void heading(Canvas canvas, Box below, String words) {
        canvas.write(
                Text.at(below.x(), below.y() - 8, words).in(TextStyle.HEADING).within(below.width()));
    }

    private void temperatures(Canvas canvas, Box box, double last) {
        double top = 0;
        for (int k = 0; k < curve.seconds().length; k++) {
            top = Math.max(top, Math.max(shown(curve.measured()[k]), shown(curve.high()[k])));
        }
        Plot plot = Plot.of(canvas, box, 0, last, HEADROOM * top);
        canvas.draw(Style.CHART_GROUND, box);
        plot.grid();
        columns(plot, last);
        canvas.clip(box, () -> {
            plot.area(Style.SPREAD, points(k ->
                    new double[] {minutes(k), shown(curve.low()[k]), shown(curve.high()[k])}));
            plot.curve(Style.CURVE_2, points(k -> new double[] {minutes(k), shown(curve.likely()[k])}));
            plot.curve(Style.WATTS_CURVE, points(k -> new double[] {minutes(k), shown(curve.fitted()[k])}));
            points(k -> new double[] {minutes(k), shown(curve.measured()[k])}).forEach(p -> dot(plot, p));
        });
        plot.frame();
    }

    private static void columns(Plot plot, double last) {
        for (double mark : plot.columns(0, last)) {
            plot.upright(Style.GRID, mark);
        }
    }

    private void residuals(Canvas canvas, Box box, double last) {
        double most = LEAST_OFF;
        for (int k = 0; k < curve.seconds().length; k++) {
            most = Math.max(most, HEADROOM * Math.abs(off(k)));
        }
        Plot plot = new Plot(
                canvas, box, new Scale(0, last, box.x(), box.right()), new Scale(-most, most, box.bottom(), box.y()));
        canvas.draw(Style.CHART_GROUND, box);
        for (double mark : Ticks.between(-most, most, 3)) {
            plot.level(mark == 0 ? Style.ZERO : Style.GRID, mark);
            plot.beside(mark, Ticks.text(mark));
        }
        columns(plot, last);
        for (double mark : plot.columns(0, last)) {
            plot.below(mark, Ticks.text(mark));
        }
        points(k -> new double[] {minutes(k), off(k)}).forEach(p -> dot(plot, p));
        plot.frame();
    }

    private static void dot(Plot plot, double[] point) {
        plot.canvas()
                .draw(
                        Style.CURVE_MARK,
                        new Circle(plot.x().at(point[0]), plot.y().within(point[1]), DOT));
    }

    private List<double[]> points(Function<Integer, double[]> point) {
        List<double[]> points = new ArrayList<>();
        for (int k = 0; k < curve.seconds().length; k++) {
            points.add(point.apply(k));
        }
        return points;
    }

    private double minutes(int k) {
        return curve.seconds()[k] / MINUTE;
    }

    private double off(int k) {
        return (curve.measured()[k] - curve.fitted()[k]) * (fahrenheit ? 1.8 : 1);
    }

    private double shown(double celsius) {
        return fahrenheit ? celsius * 1.8 + 32 : celsius;
    }
}
