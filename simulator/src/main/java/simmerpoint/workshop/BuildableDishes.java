package simmerpoint.workshop;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Predicate;
import simmerpoint.dish.DishPlan;
import simmerpoint.scenario.Scenario;

/** Which dishes that a search tries can be cut from the file's stock; each is looked at once. */
public final class BuildableDishes {
    private BuildableDishes() {}

    /** Those whose ribs and panels fit its sheets. */
    public static Predicate<Scenario> of(CuttingStock stock) {
        Map<DishPlan, Boolean> known = new HashMap<>();
        return scenario -> known.computeIfAbsent(scenario.dish(), dish -> canBeCut(scenario, stock));
    }

    private static boolean canBeCut(Scenario scenario, CuttingStock stock) {
        try {
            CutPlan.check(scenario, stock);
            return true;
        } catch (CuttingException e) {
            return false;
        }
    }
}
