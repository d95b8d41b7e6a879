package simmerpoint.drawing.chart;

import java.util.List;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.sampling.Estimate;
import simmerpoint.trial.ClassResult;

/** Cookers of a class as bars of their watts, the best first, with 95 % intervals. */
public final class ClassChart implements Drawing {
    private static final double HEAD = 26;
    private static final double ROW = 26;
    private static final double THICK = 14;
    private static final double NAMES = 0.3;
    private static final double ROOM = 60;

    private final List<ClassResult.Cooker> cookers;

    /** Those that have a figure. */
    public ClassChart(ClassResult result) {
        cookers = result.cookers().stream().filter(c -> c.rank() > 0).toList();
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEAD + cookers.size() * ROW + 8;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double names = NAMES * box.width();
        Box bars =
                new Box(box.x() + names, box.y() + HEAD, box.width() - names - ROOM, Math.max(1, cookers.size()) * ROW);
        double low = 0;
        double high = 1;
        for (ClassResult.Cooker cooker : cookers) {
            low = Math.min(low, watts(cooker) - half(cooker));
            high = Math.max(high, watts(cooker) + half(cooker));
        }
        Plot plot = Plot.of(canvas, bars, 1.05 * low, 1.05 * high, 1);
        plot.above();
        for (int k = 0; k < cookers.size(); k++) {
            bar(plot, cookers.get(k), box.x(), bars.y() + k * ROW + (ROW - THICK) / 2, names);
        }
    }

    private static void bar(Plot plot, ClassResult.Cooker cooker, double left, double y, double names) {
        Canvas canvas = plot.canvas();
        canvas.write(Text.at(left, y + THICK - 3, cooker.rank() + "  " + cooker.name())
                .within(names - 10));
        double zero = plot.x().at(0);
        double end = plot.x().at(watts(cooker));
        Style style = cooker.rank() == 1 ? Style.LIKE_BEST : Style.WORSE;
        canvas.draw(style, new Box(Math.min(zero, end), y, Math.max(1.2, Math.abs(end - zero)), THICK));
        plot.whisker(new Estimate(watts(cooker), half(cooker)), 1, y + THICK / 2, 4);
        double to = Math.max(end, plot.x().at(watts(cooker) + half(cooker)));
        canvas.write(Text.at(to + 6, y + THICK - 3, FigureFormat.fixed(watts(cooker), 0) + "\u00a0W")
                .within(ROOM - 6));
    }

    private static double watts(ClassResult.Cooker cooker) {
        return cooker.watts().orElseThrow().value();
    }

    private static double half(ClassResult.Cooker cooker) {
        return cooker.halfWidth().orElse(0);
    }
}
