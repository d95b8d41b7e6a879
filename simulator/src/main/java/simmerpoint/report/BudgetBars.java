package simmerpoint.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import simmerpoint.answer.Figures;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.study.budget.Significance;

/** Pairs of bars: what a flaw costs when it is mended alone, and when it is there alone; whiskers of two errors. */
final class BudgetBars {
    private static final double WHISKER_ERRORS = 2;
    private static final int ROOM_FOR_FIGURES = 150;

    private final Graphics2D g;
    private final Brush brush;
    private final Rectangle box;
    private final int rowHeight;
    private final BudgetResult result;
    private final Figures figures;
    private final WattAxis axis;

    BudgetBars(Graphics2D g, Rectangle box, int rowHeight, BudgetResult result, Figures figures) {
        this.g = g;
        this.brush = new Brush(g);
        this.box = box;
        this.rowHeight = rowHeight;
        this.result = result;
        this.figures = figures;
        double low = 0;
        double high = 0;
        for (FlawCost cost : result.costs()) {
            low = Math.min(low, Math.min(least(cost.offInTurn()), least(cost.onAlone())));
            high = Math.max(high, Math.max(most(cost.offInTurn()), most(cost.onAlone())));
        }
        low = Math.min(low, Math.min(least(result.leftInTurn()), least(result.leftAlone())));
        high = Math.max(1, Math.max(high, Math.max(most(result.leftInTurn()), most(result.leftAlone()))));
        Rectangle bars = new Rectangle(box.x, box.y, box.width - ROOM_FOR_FIGURES, box.height);
        axis = new WattAxis(g, bars, low < 0 ? low * 1.05 : 0, high * 1.05);
    }

    private static double least(Estimate e) {
        return e.value() - WHISKER_ERRORS * e.standardError();
    }

    private static double most(Estimate e) {
        return e.value() + WHISKER_ERRORS * e.standardError();
    }

    void paint() {
        axis.paint("What each costs, W");
        int row = 1;
        for (FlawCost cost : result.costs()) {
            pair(row++, cost.offInTurn(), cost.onAlone());
        }
        pair(row, result.leftInTurn(), result.leftAlone());
        legend();
    }

    private void pair(int row, Estimate inTurn, Estimate alone) {
        double y = box.y + row * rowHeight;
        bar(y + 6, inTurn, BudgetColours.IN_TURN);
        bar(y + rowHeight / 2.0 + 1, alone, BudgetColours.ALONE);
    }

    private void bar(double y, Estimate watts, Color colour) {
        double thick = rowHeight / 2.0 - 8;
        double zero = axis.x(0);
        double end = axis.x(watts.value());
        g.setColor(colour);
        g.fill(new Rectangle2D.Double(Math.min(zero, end), y, Math.max(1.5, Math.abs(end - zero)), thick));
        double from = axis.x(least(watts));
        double to = axis.x(most(watts));
        g.setColor(Brush.INK);
        if (to - from > 2) {
            whisker(from, to, y + thick / 2);
        }
        String text =
                Significance.of(watts) ? figures.plainWatts(watts) : result.isNothing(watts) ? "none" : "not sure";
        brush.line(text, Brush.font(15), 10, Math.max(Math.max(zero, end), to) + 8, y + thick - 3, ROOM_FOR_FIGURES);
    }

    private void whisker(double from, double to, double y) {
        g.setStroke(new BasicStroke(1.5f));
        g.draw(new Line2D.Double(from, y, to, y));
        g.draw(new Line2D.Double(from, y - 4, from, y + 4));
        g.draw(new Line2D.Double(to, y - 4, to, y + 4));
        g.setStroke(new BasicStroke(1));
    }

    private void legend() {
        double y = box.y + box.height + 34.0;
        sample(y, BudgetColours.IN_TURN, "mended alone, it brings (the built cooker without this one flaw)");
        sample(y + 30, BudgetColours.ALONE, "there alone, it costs (a perfect cooker with this one flaw)");
        g.setColor(Brush.GREY);
        brush.line(
                "whiskers: two standard errors; where none is seen they are thinner than a line",
                Brush.font(15),
                10,
                box.x,
                y + 62,
                box.width);
    }

    private void sample(double y, Color colour, String text) {
        g.setColor(colour);
        g.fill(new Rectangle2D.Double(box.x, y - 14, 26, 16));
        g.setColor(Brush.INK);
        brush.line(text, Brush.font(16), 10, box.x + 36.0, y, box.width - 36.0);
    }
}
