package simmerpoint.study.panels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.TraceOptions;

class OnePanelLightTest {
    private static OnePanelLight light(String file, Map<String, String> typed) throws Exception {
        CheckedScenario read = ScenarioReader.read(Path.of("../scenarios/" + file));
        Scenario scenario = CheckedScenario.of(read.values().with(typed)).scenario();
        int panels = scenario.dish().outlines().size();
        return OnePanelLight.brightest(scenario, panels, TraceOptions.defaults());
    }

    /** A flat mirror gathers nothing: no more than its share of the beam, but for the luck of a hundred rays, of 144 panels the best. */
    @Test
    void aFlatPanelIsNoBrighterThanTheSun() throws Exception {
        double beam = 850 * 0.85 * 0.98 * 0.97;
        double found = light("tea-kitchen.yaml", Map.of()).flux();
        assertTrue(found > 0.6 * beam && found < 1.45 * beam, () -> found + " W/m² for " + beam);
    }

    /** A bent strip gathers its light along a line, many times brighter than the sun; how bright goes with the beam. */
    @Test
    void aBentStripIsManyTimesBrighter() throws Exception {
        double beam = 1000;
        Map<String, String> sun = Map.of("sun.beam", beam + " W/m2");
        double strip = light("garden-strips.yaml", sun).flux();
        assertTrue(strip > 5 * beam, () -> strip + " W/m²");
        assertEquals(
                strip,
                light("garden-strips.yaml", Map.of("sun.beam", "500 W/m2")).flux() * 2,
                1e-6 * strip);
    }
}
