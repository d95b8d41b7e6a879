package simmerpoint.scenario.checks;

import simmerpoint.dish.DishPlan;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.values.ScenarioValues;

/** Whether any whole tile fits into the dish: only laying them out tells. For scenarios whose keys are good otherwise. */
final class TileChecks {
    private static final String KEY = "dish.surface.tile";

    /** The last dish whose tiles fit: whoever changes other keys again and again need not wait for thousands of tiles. */
    private static volatile DishPlan lastLaidOut;

    private TileChecks() {}

    static void check(DishPlan dish, ScenarioValues values, Problems problems) {
        if (dish.equals(lastLaidOut)) {
            return;
        }
        if (dish.cut().fits(dish)) {
            lastLaidOut = dish;
        } else {
            String where = dish.hubMetres() > 0
                    ? "between the hub, " + values.shown("dish.hub") + " wide, and the rim of the dish, "
                    : "into the dish, ";
            problems.add(
                    values.line(KEY),
                    KEY,
                    "not one whole tile of " + values.shown(KEY) + " fits " + where + values.shown("dish.diameter")
                            + " wide; a tile must be smaller");
        }
    }
}
