package simmerpoint.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.units.UnitSystem;

class SmallerDishTest {
    private static CutPlan plan(Map<String, String> typed) throws Exception {
        CheckedScenario read = ScenarioReader.read(Path.of("../scenarios/garden-strips.yaml"));
        CheckedScenario changed = CheckedScenario.of(read.values().with(typed));
        return CutPlan.of(changed, UnitSystem.METRIC).comparedWithSmaller(changed);
    }

    /** A strip a little wider than a third of the film takes another roll; the dish that is named does not. */
    @Test
    void aMillimetreTooMuchCostsNoRollUnnoticed() throws Exception {
        CutPlan wide = plan(Map.of("dish.diameter", "127.5 cm"));
        SmallerDish found = wide.smaller().orElseThrow();
        CutPlan taken = plan(Map.of("dish.diameter", found.diameter() + " m"));
        assertEquals(wide.sheets() - found.sheets(), taken.sheets());
        assertEquals(
                wide.filmSheets().sheets().size() - found.rolls(),
                taken.filmSheets().sheets().size());
        assertTrue(found.rolls() > 0 && found.diameter() > 1.22, found::toString);
    }

    @Test
    void nothingIsSaidWhereNothingIsSaved() throws Exception {
        assertEquals(Optional.empty(), plan(Map.of("dish.diameter", "115 cm")).smaller());
        assertEquals(
                Optional.empty(),
                plan(Map.of("build.film-length", "10 m", "build.sheet-length", "10 m"))
                        .smaller());
    }
}
