package simmerpoint.report;

import simmerpoint.answer.budget.BudgetAnswer;
import simmerpoint.answer.words.Cautions;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.chart.BudgetChart;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.units.UnitSystem;

/**
 * A budget of flaws as a picture: bars that step down from a perfect cooker to the one that is built, and beside them
 * what each flaw costs when it is mended alone and when it is there alone.
 */
final class BudgetPicture {
    private BudgetPicture() {}

    static Sheet sheet(BudgetResult result, UnitSystem system) {
        String title = OneLine.of(result.scenario().title());
        return new Sheet(title.isEmpty() ? "What the flaws cost" : title)
                .subtitle(BudgetAnswer.first(result, system))
                .gap(14)
                .with(new BudgetChart(result, system))
                .caption(Cautions.ALWAYS);
    }

    /** The same for the page. */
    static HtmlFigure figure(BudgetResult result, UnitSystem system) {
        return HtmlFigure.drawing(
                new BudgetChart(result, system),
                "Bars of the watts of a perfect cooker and of this one, and of what each flaw costs; the table holds the same"
                        + " figures.",
                "Bars to the left: below nothing, since the flaw makes up for another or light that one takes no other can take.");
    }
}
