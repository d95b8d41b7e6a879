package simmerpoint.report;

import simmerpoint.answer.Figures;
import simmerpoint.answer.FlawWords;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.study.budget.Significance;
import simmerpoint.units.UnitSystem;

/** What each flaw costs, as pairs of bars below the perfect and the built cooker; narrow enough for a phone. */
final class BudgetDrawing {
    private static final double LEFT = 4;
    private static final double BARS = 282;
    private static final double WHOLE_ROW = 34;
    private static final double ROW = 44;
    private static final double THICK = 11;
    private static final double HEADING = 40;
    private static final double KEY = 44;

    private final BudgetResult result;
    private final Figures figures;
    private final FlawWords words;
    private final double low;
    private final double high;
    private final SvgSheet sheet;

    BudgetDrawing(BudgetResult result, UnitSystem system) {
        this.result = result;
        figures = new Figures(system);
        words = new FlawWords(result.scenario(), figures);
        double least = Math.min(
                0, Math.min(result.leftInTurn().value(), result.leftAlone().value()));
        double most = Math.max(
                1, Math.max(result.leftInTurn().value(), result.leftAlone().value()));
        for (FlawCost cost : result.costs()) {
            least = Math.min(
                    least, Math.min(cost.offInTurn().value(), cost.onAlone().value()));
            most = Math.max(
                    most, Math.max(cost.offInTurn().value(), cost.onAlone().value()));
        }
        low = least;
        high = most;
        sheet = new SvgSheet(
                2 * WHOLE_ROW + HEADING + ROW * (result.costs().size() + 1) + KEY,
                "Bars of the watts of a perfect cooker and of this one, and of what each flaw costs; the table holds the same"
                        + " figures.");
    }

    HtmlFigure figure() {
        whole(0, "perfect", result.perfect());
        whole(WHOLE_ROW, "as built", result.built());
        double y = 2 * WHOLE_ROW + HEADING;
        sheet.text("heading", "start", LEFT, y - 14, 0, "What each flaw costs");
        double top = y;
        for (FlawCost cost : result.costs()) {
            pair(y, words.sized(cost.flaw()), cost.offInTurn(), cost.onAlone());
            y += ROW;
        }
        pair(y, "acting together", result.leftInTurn(), result.leftAlone());
        sheet.line("edge", x(0), top, x(0), y + ROW);
        key(y + ROW + 16);
        return HtmlFigure.drawing(
                sheet.finished(),
                "Bars to the left: below nothing, since the flaw makes up for another or light that one takes no other can take.");
    }

    private void whole(double y, String name, Estimate watts) {
        double share = watts.value() / Math.max(1e-9, result.perfect().value());
        sheet.text("start", LEFT, y + 12, name);
        sheet.rectangle("entire", LEFT, y + 17, BARS * Math.max(0, share), THICK);
        sheet.text("start", LEFT + BARS * Math.max(0, share) + 6, y + 27, figures.plainWatts(watts));
    }

    private double x(double watts) {
        return LEFT + (watts - low) / (high - low) * BARS;
    }

    private void pair(double y, String name, Estimate inTurn, Estimate alone) {
        bar("mended", y + 17, inTurn);
        bar("alone", y + 17 + THICK + 1, alone);
        sheet.text("start", Math.min(x(0) + 3, SvgSheet.WIDTH - 7 * name.length()), y + 13, name);
    }

    private void bar(String style, double y, Estimate watts) {
        double zero = x(0);
        double end = x(watts.value());
        sheet.rectangle(style, Math.min(zero, end), y, Math.max(1.2, Math.abs(end - zero)), THICK);
        String text =
                Significance.of(watts) ? figures.plainWatts(watts) : result.isNothing(watts) ? "none" : "not sure";
        sheet.text("start", Math.max(zero, end) + 6, y + THICK - 1, text);
    }

    private void key(double y) {
        sheet.rectangle("mended", LEFT, y - 10, 14, THICK);
        sheet.text("start", LEFT + 22, y, "mended alone in this cooker, it brings");
        sheet.rectangle("alone", LEFT, y + 8, 14, THICK);
        sheet.text("start", LEFT + 22, y + 18, "there alone in a perfect one, it costs");
    }
}
