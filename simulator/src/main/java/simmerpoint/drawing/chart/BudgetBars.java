package simmerpoint.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.Significance;

/** Pairs of bars: what a flaw costs when it is mended alone, and when it is there alone; whiskers of two errors. */
final class BudgetBars {
    private static final double WHISKER_ERRORS = 2;
    private static final double ROOM_FOR_FIGURES = 72;

    private final BudgetResult result;
    private final FigureFormat figures;
    private final List<Estimate> mended = new ArrayList<>();
    private final List<Estimate> alone = new ArrayList<>();

    BudgetBars(BudgetResult result, FigureFormat figures) {
        this.result = result;
        this.figures = figures;
        result.costs().forEach(cost -> {
            mended.add(cost.offInTurn());
            alone.add(cost.onAlone());
        });
        mended.add(result.leftInTurn());
        alone.add(result.leftAlone());
    }

    /** The scale of all bars within a box, with room for figures at its right. */
    Plot plot(Canvas canvas, Box box) {
        double low = 0;
        double high = 1;
        for (List<Estimate> bars : List.of(mended, alone)) {
            for (Estimate watts : bars) {
                low = Math.min(low, least(watts));
                high = Math.max(high, most(watts));
            }
        }
        return Plot.of(canvas, box.inside(4, 0, ROOM_FOR_FIGURES, 0), 1.05 * low, 1.05 * high, 1);
    }

    private static double least(Estimate e) {
        return e.value() - WHISKER_ERRORS * e.standardError();
    }

    private static double most(Estimate e) {
        return e.value() + WHISKER_ERRORS * e.standardError();
    }

    /** The bars of one flaw, below each other. */
    void pair(Plot plot, int k, double y, double thick) {
        bar(plot, Style.MENDED, mended.get(k), y, thick);
        bar(plot, Style.ALONE, alone.get(k), y + thick + 1, thick);
    }

    private void bar(Plot plot, Style style, Estimate watts, double y, double thick) {
        Canvas canvas = plot.canvas();
        double zero = plot.x().at(0);
        double end = plot.x().at(watts.value());
        canvas.draw(style, new Box(Math.min(zero, end), y, Math.max(1.2, Math.abs(end - zero)), thick));
        plot.whisker(watts, WHISKER_ERRORS, y + thick / 2, 3);
        double to = plot.x().at(most(watts));
        String text =
                Significance.of(watts) ? figures.plainWatts(watts) : result.isNothing(watts) ? "none" : "not sure";
        canvas.write(Text.at(Math.max(Math.max(zero, end), to) + 6, y + thick - 1.5, text)
                .in(TextStyle.NOTE)
                .size(Math.min(Text.SIZE, Math.rint(thick)))
                .within(ROOM_FOR_FIGURES));
    }

    /** What the two colours mean. */
    static Legend legend() {
        return new Legend()
                .swatch(Style.MENDED, "mended alone in this cooker, it brings")
                .swatch(Style.ALONE, "there alone in a perfect one, it costs");
    }
}
