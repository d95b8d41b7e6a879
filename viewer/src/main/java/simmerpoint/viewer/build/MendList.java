package simmerpoint.viewer.build;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import simmerpoint.answer.budget.FlawWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.study.budget.Significance;
import simmerpoint.units.UnitSystem;

/** What is worth mending, the most rewarding first; what nobody can mend is left out. */
record MendList(BudgetResult result, UnitSystem units) {
    /** Nobody can mend the shadow of a pan that stands in the sun. */
    private static final Set<String> BEYOND_MENDING = Set.of("pan-shadow");

    /** What a film or mirror is like cannot be mended, only bought better. */
    private static final Set<String> MATERIAL = Set.of("reflectance", "scatter", "beam-spread");

    private static final Map<String, String> ADVICE = Map.ofEntries(
            Map.entry("flat-panels", "Bend the panels, or take more and narrower ones."),
            Map.entry("hub-and-gaps", "Close the hole in the middle and the slits between panels."),
            Map.entry("slope-error", "Take a stiffer backing under the film and glue it without waves."),
            Map.entry("panel-tilt", "Glue the panels down against a straight edge, each square to its ribs."),
            Map.entry("beam-spread", "Take a film or mirror that blurs less."),
            Map.entry("rib-cut", "Cut the ribs closer to the line; clamp and sand them together."),
            Map.entry("rib-set", "Set each rib by a template before the glue is dry."),
            Map.entry("sag", "Support the sheet midway between the ribs, or take more ribs."),
            Map.entry("panel-edge", "Cut the panels closer to the line."),
            Map.entry("bubbles", "Glue the film wet and press the bubbles out from the middle."),
            Map.entry("reflectance", "Take a brighter film or mirror."),
            Map.entry("scatter", "Take a smoother film or mirror; polish scratches out."),
            Map.entry("dust", "Wipe the mirrors before cooking."),
            Map.entry("drift", "Aim again sooner."),
            Map.entry("turn", "Aim by the shadow of a pin that stands square on the dish."),
            Map.entry("jitter", "Stiffen the stand, or cook out of the wind."),
            Map.entry("grate-and-arm", "Take thinner bars, or fewer of them."),
            Map.entry("pan-place", "Stand the pan at the focus."));

    /**
     * One thing to mend.
     *
     * @param name what is wrong, with its size
     * @param advice what to do
     * @param watts what that brings
     * @param share of the largest, 0 to 1
     */
    record Row(String name, String advice, String watts, double share) {}

    private List<FlawCost> mendable(boolean bought) {
        return result.costs().stream()
                .filter(cost -> !BEYOND_MENDING.contains(cost.flaw().key()))
                .filter(cost -> MATERIAL.contains(cost.flaw().key()) == bought)
                .sorted(Comparator.comparingDouble(cost -> -cost.offInTurn().value()))
                .toList();
    }

    /** Everything that hands can mend and that surely brings something. */
    List<Row> rows() {
        return rows(false);
    }

    /** What only another film or mirror changes; none is perfect. */
    List<Row> bought() {
        return rows(true);
    }

    private List<Row> rows(boolean bought) {
        FigureFormat figures = new FigureFormat(units);
        FlawWords words = new FlawWords(result.scenario(), figures);
        List<FlawCost> worth = mendable(bought).stream()
                .filter(cost -> cost.offInTurn().value() > 0
                        && Significance.of(cost.offInTurn())
                        && !result.isNothing(cost.offInTurn()))
                .toList();
        double most = worth.isEmpty() ? 1 : worth.get(0).offInTurn().value();
        return worth.stream()
                .map(cost -> new Row(
                        words.sized(cost.flaw()),
                        ADVICE.getOrDefault(cost.flaw().key(), ""),
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
