package simmerpoint.scenario.checks;

import simmerpoint.dish.DishPlan;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.units.QuantityWriter;

/** Whether a mesh fits the dish it is said to be; a wrong unit shows here. */
final class MeshChecks {
    private static final double SLACK = 1.01;
    private static final double LEAST_SHARE = 0.5;

    private MeshChecks() {}

    static void check(DishPlan dish, ScenarioValues values, Problems problems) {
        double reach = dish.cut().reachMetres(dish);
        boolean tooWide = !(reach <= dish.radiusMetres() * SLACK);
        if (tooWide || !(reach >= dish.radiusMetres() * LEAST_SHARE)) {
            problems.add(
                    values.line("dish.surface.unit"),
                    "dish.surface.unit",
                    "with numbers in " + values.text("dish.surface.unit") + " the mesh reaches "
                            + QuantityWriter.length(reach)
                            + " from the axis, but half of dish.diameter is "
                            + QuantityWriter.length(dish.radiusMetres())
                            + "; check unit and diameter");
        }
    }
}
