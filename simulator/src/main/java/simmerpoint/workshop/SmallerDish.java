package simmerpoint.workshop;

import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.units.UnitSystem;

/**
 * A dish a little smaller than the one planned that takes fewer sheets or rolls: often all that a second roll is for is a
 * millimetre.
 *
 * @param diameter of its rim, m
 * @param sheets how many sheets for ribs and panels it saves
 * @param rolls how many rolls or sheets of film it saves
 */
public record SmallerDish(double diameter, int sheets, int rolls) {
    /** A dish smaller than by that brings more than a tenth less and is another dish. */
    private static final double LEAST = 0.95;

    private static final Map<UnitSystem, Double> STEPS = Map.of(UnitSystem.METRIC, 0.01, UnitSystem.INCH, 0.0127);

    /** The largest one that saves as much as the smallest allowed, at whole centimetres or half inches. */
    static Optional<SmallerDish> of(CheckedScenario read, CutPlan plan) {
        double diameter = plan.scenario().dish().diameterMetres();
        double step = STEPS.get(plan.units());
        long saves = (long) Math.ceil(LEAST * diameter / step);
        long savesNot = (long) Math.ceil(diameter / step - 1e-9);
        Optional<SmallerDish> best = mayTakeLess(plan) ? at(saves * step, read, plan) : Optional.empty();
        while (best.isPresent() && savesNot - saves > 1) {
            long middle = (saves + savesNot) / 2;
            int most = best.get().saved();
            Optional<SmallerDish> found = at(middle * step, read, plan).filter(each -> each.saved() >= most);
            saves = found.isPresent() ? middle : saves;
            savesNot = found.isPresent() ? savesNot : middle;
            best = found.isPresent() ? found : best;
        }
        return best;
    }

    private int saved() {
        return sheets + rolls;
    }

    private static boolean mayTakeLess(CutPlan plan) {
        return plan.ribSheets().sheets().size() > 1
                || plan.panelSheets().sheets().size() > 1
                || plan.filmSheets().sheets().size() > 1;
    }

    private static Optional<SmallerDish> at(double diameter, CheckedScenario read, CutPlan plan) {
        try {
            CutPlan less = CutPlan.of(
                    CheckedScenario.scenario(read.values().withNumbers(Map.of("dish.diameter", diameter))),
                    plan.stock(),
                    plan.units());
            int sheets = plan.sheets() - less.sheets();
            int rolls = plan.filmSheets().sheets().size()
                    - less.filmSheets().sheets().size();
            return Optional.of(new SmallerDish(diameter, sheets, rolls))
                    .filter(found -> found.sheets() >= 0 && found.rolls() >= 0 && found.saved() > 0);
        } catch (ScenarioException | CuttingException e) {
            return Optional.empty();
        }
    }
}
