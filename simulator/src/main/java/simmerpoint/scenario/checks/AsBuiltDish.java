package simmerpoint.scenario.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.RibLayout;
import simmerpoint.dish.built.RibMeasurements;
import simmerpoint.dish.built.RibTable;
import simmerpoint.dish.cut.MeasuredRibs;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.values.ScenarioValues;

/** The dish on ribs as they were measured, where a scenario names a file of them. */
final class AsBuiltDish {
    /** The key of the file. */
    static final String FILE = "as-built.ribs";

    /** Ribs farther off are not a dish any more. */
    private static final double MOST_OFF = 0.1;

    /** Distances are written to a tenth of a millimetre or so, m. */
    private static final double ROUNDING = 1e-3;

    private AsBuiltDish() {}

    /** The plan itself where nothing was measured, or where what is wrong is told to {@code problems}. */
    static DishPlan of(DishPlan plan, ScenarioValues v, Problems problems) {
        if (!v.has(FILE)) {
            return plan;
        }
        Optional<RibMeasurements> read = NamedFile.read(v, FILE, problems, RibTable::read);
        if (read.isEmpty()) {
            return plan;
        }
        RibMeasurements measured = read.get();
        Optional<String> refusal = refusal(plan, measured);
        if (refusal.isEmpty()) {
            return plan.withCut(new MeasuredRibs(plan.cut(), measured.radii(), heights(plan, measured)));
        }
        problems.add(v.line(FILE), FILE, refusal.get());
        return plan;
    }

    private static Optional<String> refusal(DishPlan plan, RibMeasurements measured) {
        Optional<RibLayout> ribs = plan.cut().has(CutTrait.RIBS) ? plan.cut().ribs(plan) : Optional.empty();
        if (ribs.isEmpty()) {
            return Optional.of("this dish has no ribs; take flat-rings or bent-strips, or leave the section out");
        }
        if (ribs.get().sectors() != measured.ribs()) {
            return Optional.of("the file has " + measured.ribs() + " ribs and the dish has "
                    + ribs.get().sectors() + "; one column for each is allowed");
        }
        double last = measured.radii().get(measured.radii().size() - 1);
        if (last > plan.radiusMetres() + ROUNDING) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "the last distance from the middle is %.0f mm, and the rim is at %.0f mm",
                    1000 * last,
                    1000 * plan.radiusMetres()));
        }
        double off = heights(plan, measured).stream()
                .flatMap(List::stream)
                .mapToDouble(Math::abs)
                .max()
                .orElse(0);
        return off > MOST_OFF
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "a rib is %.0f mm off its plan; depths are measured from the rim's plane down to the mirror, in the unit"
                                + " that the first line names",
                        1000 * off))
                : Optional.empty();
    }

    /** Heights above the plan: measured depths are counted down from the level of the longest ribs' planned tips. */
    private static List<List<Double>> heights(DishPlan plan, RibMeasurements measured) {
        double rim = plan.profile().height(plan.cut().ribs(plan).orElseThrow().longest());
        List<List<Double>> ribs = new ArrayList<>();
        for (List<Double> depths : measured.depths()) {
            List<Double> heights = new ArrayList<>();
            for (int k = 0; k < depths.size(); k++) {
                heights.add(rim
                        - depths.get(k)
                        - plan.profile().height(measured.radii().get(k)));
            }
            ribs.add(heights);
        }
        return ribs;
    }
}
