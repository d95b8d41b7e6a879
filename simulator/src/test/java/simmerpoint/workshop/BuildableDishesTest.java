package simmerpoint.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.units.UnitSystem;

class BuildableDishesTest {
    /** A dish is buildable just where the whole plan can be made, film narrower than its panels or not. */
    @Test
    void isBuildableWhereThereIsAPlan() throws Exception {
        List<Boolean> seen = new ArrayList<>();
        CheckedScenario base = ScenarioReader.builtIn().with(Map.of("build.film-width", "5 cm"));
        CuttingStock stock = CuttingStock.of(base.values());
        Predicate<Scenario> buildable = BuildableDishes.of(stock);
        for (String diameter : List.of("1 m", "2 m", "2.6 m", "3 m")) {
            for (String sectors : List.of("8", "16", "36")) {
                CheckedScenario dish = base.with(Map.of(
                        "dish.diameter", diameter,
                        "dish.surface.cut", "bent-strips",
                        "dish.surface.sectors", sectors));
                boolean planned = planned(dish, stock);
                assertEquals(planned, buildable.test(dish.scenario()), diameter + ", " + sectors);
                seen.add(planned);
            }
        }
        assertTrue(seen.contains(true));
        assertFalse(seen.stream().allMatch(planned -> planned));
    }

    private static boolean planned(CheckedScenario dish, CuttingStock stock) {
        try {
            CutPlan.of(dish.scenario(), stock, UnitSystem.METRIC);
            return true;
        } catch (CuttingException e) {
            return false;
        }
    }
}
