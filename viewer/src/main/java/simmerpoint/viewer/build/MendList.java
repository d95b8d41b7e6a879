package simmerpoint.viewer.build;

import java.util.Comparator;
import java.util.List;
import simmerpoint.answer.budget.FlawWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.Flaw;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.study.budget.Significance;
import simmerpoint.units.UnitSystem;

/** What is worth mending, the most rewarding first; what nobody can mend is left out. */
record MendList(BudgetResult result, UnitSystem units) {
    /**
     * One thing to mend.
     *
     * @param name what is wrong, with its size
     * @param advice what to do
     * @param watts what that brings
     * @param share of the largest, 0 to 1
     */
    record Row(String name, String advice, String watts, double share) {}

    private List<FlawCost> mendable(Flaw.Mending how) {
        return result.costs().stream()
                .filter(cost -> cost.flaw().mending() == how)
                .sorted(Comparator.comparingDouble(cost -> -cost.offInTurn().value()))
                .toList();
    }

    /** Everything that hands can mend and that surely brings something. */
    List<Row> rows() {
        return rows(Flaw.Mending.BY_HAND);
    }

    /** What only another film or mirror changes; none is perfect. */
    List<Row> bought() {
        return rows(Flaw.Mending.BY_BUYING);
    }

    private List<Row> rows(Flaw.Mending how) {
        FigureFormat figures = new FigureFormat(units);
        FlawWords words = new FlawWords(result.scenario(), figures);
        List<FlawCost> worth = mendable(how).stream()
                .filter(cost -> cost.offInTurn().value() > 0
                        && Significance.of(cost.offInTurn())
                        && !result.isNothing(cost.offInTurn()))
                .toList();
        double most = worth.isEmpty() ? 1 : worth.get(0).offInTurn().value();
        return worth.stream()
                .map(cost -> new Row(
                        words.sized(cost.flaw()),
                        cost.flaw().advice(),
                        FigureFormat.rounded(cost.offInTurn().value(), 2) + FigureFormat.NBSP + "W",
                        cost.offInTurn().value() / most))
                .toList();
    }

    /** What to mend first, in one sentence. */
    String first() {
        List<Row> rows = rows();
        return rows.isEmpty()
                ? "There is nothing worth mending."
                : "Mend first: " + rows.get(0).name() + ". That alone brings "
                        + rows.get(0).watts() + " more.";
    }
}
