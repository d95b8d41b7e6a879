package simmerpoint.report;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import simmerpoint.answer.BudgetAnswer;
import simmerpoint.answer.Figures;
import simmerpoint.answer.FlawWords;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.units.UnitSystem;

/** How the picture of a budget is laid out: heading, one row per flaw with its stair on the left and its bars right. */
final class BudgetSheet {
    static final int WIDTH = 1400;

    private static final int MARGIN = 40;
    private static final int INNER = WIDTH - 2 * MARGIN;
    private static final int NAMES = 270;
    private static final int TOP = 214;
    private static final int ROW = 52;
    private static final int FOOT = 150;
    private static final int STAIR = 440;
    private static final int BETWEEN = 60;

    private final BudgetResult result;
    private final UnitSystem system;
    private final Figures figures;
    private final FlawWords words;

    BudgetSheet(BudgetResult result, UnitSystem system) {
        this.result = result;
        this.system = system;
        figures = new Figures(system);
        words = new FlawWords(result.scenario(), figures);
    }

    /** Perfect, the flaws, what is left over, as built. */
    private int rows() {
        return result.costs().size() + 3;
    }

    int height() {
        return TOP + rows() * ROW + FOOT;
    }

    void paint(Graphics2D g) {
        Brush brush = new Brush(g);
        heading(g, brush);
        Rectangle left = new Rectangle(MARGIN + NAMES, TOP, STAIR, rows() * ROW);
        int rightX = left.x + STAIR + BETWEEN;
        Rectangle right = new Rectangle(rightX, TOP, WIDTH - MARGIN - rightX, rows() * ROW);
        names(g, brush);
        new BudgetStair(g, left, ROW, result, figures).paint();
        new BudgetBars(g, right, ROW, result, figures).paint();
    }

    private void heading(Graphics2D g, Brush brush) {
        String title = OneLine.of(result.scenario().title());
        g.setColor(Brush.INK);
        brush.line(title.isEmpty() ? "What the flaws cost" : title, Brush.bold(30), 13, MARGIN, 52, INNER);
        g.setColor(Brush.GREY);
        brush.paragraph(BudgetAnswer.first(result, system), Brush.font(20), MARGIN, 88, INNER);
    }

    private void names(Graphics2D g, Brush brush) {
        g.setColor(Brush.INK);
        name(brush, "perfect", true, 0);
        int row = 1;
        for (FlawCost cost : result.costs()) {
            name(brush, words.sized(cost.flaw()), false, row++);
        }
        name(brush, "acting together", false, row++);
        name(brush, "as built", true, row);
    }

    private static void name(Brush brush, String text, boolean bold, int row) {
        brush.lineTo(
                text,
                bold ? Brush.bold(18) : Brush.font(18),
                12,
                MARGIN + NAMES - 14.0,
                TOP + (row + 0.5) * ROW + 6,
                NAMES - 16.0);
    }
}
