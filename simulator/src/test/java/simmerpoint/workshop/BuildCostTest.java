package simmerpoint.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.units.UnitSystem;

/** Costs against sums by hand. */
class BuildCostTest {
    private static final String DISH =
            "dish: {diameter: 1200 mm, focal-length: 500 mm, hub: 200 mm, surface: {cut: bent-strips, sectors: 16}}\n";

    private static CutPlan plan(String more) throws Exception {
        return CutPlan.of(ScenarioReader.parse("test", DISH + more, Path.of("")), UnitSystem.METRIC);
    }

    /** Whole sheets and rolls are paid, whatever is left of them. */
    @Test
    void wholeSheetsArePaid() throws Exception {
        CutPlan plan = plan(
                "build: {prices: {currency: Fr., rib-sheet: 12, panel-sheet: 9.5, film: 35, stand: 20, rest: 7}}\n");
        BuildCost cost = plan.cost().orElseThrow();
        double sheets = 12 * plan.ribSheets().sheets().size()
                + 9.5 * plan.panelSheets().sheets().size()
                + 35 * plan.filmSheets().sheets().size();
        assertTrue(plan.sheets() >= 2, "some sheets");
        assertEquals(sheets + 27, cost.total(), 1e-12);
        assertEquals("Fr.", cost.currency());
        assertEquals((sheets + 27) / 400, cost.perWatt(400).orElseThrow(), 1e-12);
        assertTrue(cost.perWatt(0).isEmpty(), "no watts, no price of one");
    }

    @Test
    void withoutPricesThereIsNoCost() throws Exception {
        assertEquals(Optional.empty(), plan("").cost());
        assertEquals(
                Optional.empty(), plan("build: {prices: {currency: EUR}}\n").cost());
    }
}
