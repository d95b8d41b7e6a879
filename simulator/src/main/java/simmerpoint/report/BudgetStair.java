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

/** Bars from the perfect cooker's watts down to the built one's: each flaw takes off what it costs when mended alone. */
final class BudgetStair {
    private final Graphics2D g;
    private final Brush brush;
    private final Rectangle box;
    private final int rowHeight;
    private final BudgetResult result;
    private final Figures figures;
    private final WattAxis axis;

    BudgetStair(Graphics2D g, Rectangle box, int rowHeight, BudgetResult result, Figures figures) {
        this.g = g;
        this.brush = new Brush(g);
        this.box = box;
        this.rowHeight = rowHeight;
        this.result = result;
        this.figures = figures;
        double most = Math.max(result.perfect().value(), result.built().value());
        double level = result.perfect().value();
        for (FlawCost cost : result.costs()) {
            level -= cost.offInTurn().value();
            most = Math.max(most, level);
        }
        axis = new WattAxis(g, box, Math.min(0, level), Math.max(1, most * 1.04));
    }

    void paint() {
        axis.paint("From perfect to as built, W");
        double level = result.perfect().value();
        whole(0, result.perfect());
        int row = 1;
        for (FlawCost cost : result.costs()) {
            level = step(row++, level, cost.offInTurn().value(), BudgetColours.IN_TURN);
        }
        step(row++, level, result.leftInTurn().value(), BudgetColours.LEFT);
        whole(row, result.built());
        g.setColor(Brush.GREY);
        double y = box.y + box.height + 34.0;
        String step = "blue: what the flaw costs the built cooker, the dearest first";
        String left = "grey: what the flaws do together";
        brush.line(step, Brush.font(15), 10, box.x, y, box.width);
        brush.line(left, Brush.font(15), 10, box.x, y + 24, box.width);
    }

    private void whole(int row, Estimate watts) {
        bar(row, 0, watts.value(), BudgetColours.WHOLE);
        g.setColor(Color.WHITE);
        String text = figures.plainWatts(watts);
        double room = axis.x(watts.value()) - axis.x(0) - 16;
        if (room > 60) {
            brush.lineTo(text, Brush.bold(18), 12, axis.x(watts.value()) - 10, middle(row) + 6, room);
        } else {
            g.setColor(Brush.INK);
            brush.line(text, Brush.bold(18), 12, axis.x(watts.value()) + 10, middle(row) + 6, 200);
        }
    }

    private double step(int row, double from, double cost, Color colour) {
        double to = from - cost;
        bar(row, Math.min(from, to), Math.max(from, to), colour);
        g.setColor(Brush.GREY);
        g.setStroke(new BasicStroke(1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4, 4}, 0));
        g.draw(new Line2D.Double(
                axis.x(to), middle(row) + rowHeight * 0.25, axis.x(to), middle(row + 1) - rowHeight * 0.25));
        g.setStroke(new BasicStroke(1));
        return to;
    }

    private void bar(int row, double from, double to, Color colour) {
        g.setColor(colour);
        double x = axis.x(from);
        g.fill(new Rectangle2D.Double(
                x, middle(row) - rowHeight * 0.28, Math.max(1.5, axis.x(to) - x), rowHeight * 0.56));
    }

    private double middle(int row) {
        return box.y + (row + 0.5) * rowHeight;
    }
}
