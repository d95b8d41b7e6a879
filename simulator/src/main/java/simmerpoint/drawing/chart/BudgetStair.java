package simmerpoint.drawing.chart;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.FlawCost;

/**
 * Bars from the perfect cooker's watts down to the built one's: each flaw takes off what it costs when mended alone.
 *
 * @param result the budget
 * @param figures in the reader's units
 */
record BudgetStair(BudgetResult result, FigureFormat figures) {
    private static final double SHARE = 0.56;
    private static final double ROOM = 44;

    void draw(Canvas canvas, Box box, double row) {
        double level = result.perfect().value();
        double most = Math.max(level, result.built().value());
        for (FlawCost cost : result.costs()) {
            level -= cost.offInTurn().value();
            most = Math.max(most, level);
        }
        Plot plot = Plot.of(canvas, box, Math.min(0, level), Math.max(1, most * 1.04), 1);
        BudgetChart.title(plot, "From perfect to as built, W");
        plot.above();
        whole(plot, box.y() + row / 2, row, result.perfect());
        double y = box.y() + 1.5 * row;
        level = result.perfect().value();
        for (FlawCost cost : result.costs()) {
            level = step(plot, y, row, level, cost.offInTurn(), Style.MENDED);
            y += row;
        }
        step(plot, y, row, level, result.leftInTurn(), Style.TOGETHER);
        whole(plot, y + row, row, result.built());
    }

    private void whole(Plot plot, double y, double row, Estimate watts) {
        bar(plot, y, row, 0, watts.value(), Style.WHOLE);
        double end = plot.x().at(watts.value());
        Text text = Text.at(end - 7, y + 5, figures.plainWatts(watts)).size(13);
        if (end - plot.x().at(0) > ROOM) {
            plot.canvas()
                    .write(text.in(TextStyle.ON_DARK)
                            .end()
                            .within(end - plot.x().at(0) - 12));
        } else {
            plot.canvas().write(text.moved(end + 7, y + 5).in(TextStyle.HEADING));
        }
    }

    private static double step(Plot plot, double y, double row, double from, Estimate cost, Style style) {
        double to = from - cost.value();
        bar(plot, y, row, Math.min(from, to), Math.max(from, to), style);
        double x = plot.x().at(to);
        plot.canvas().line(Style.STEP, x, y + row * SHARE / 2, x, y + row * (1 - SHARE / 2));
        return to;
    }

    private static void bar(Plot plot, double y, double row, double from, double to, Style style) {
        double x = plot.x().at(from);
        double high = SHARE * row;
        plot.canvas()
                .draw(style, new Box(x, y - high / 2, Math.max(1.2, plot.x().at(to) - x), high));
    }
}
