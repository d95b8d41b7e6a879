package simmerpoint.scenario.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;

/** Glass of 3 to 4 mm does not bend over ribs. */
class MirrorPlausibilityTest {
    @ParameterizedTest
    @CsvSource({
        "bent-strips, household mirror, true",
        "flat-rings, household mirror, false",
        "bent-strips, aluminised polyester film, false",
        "bent-strips, thin silvered glass, false"
    })
    void stiffGlassOnBentPanelsIsTold(String cut, String material, boolean told) throws ScenarioException {
        boolean found =
                ScenarioReader.builtIn()
                        .with(Map.of("dish.surface.cut", cut, "mirror.material", material))
                        .warnings()
                        .stream()
                        .anyMatch(text -> text.contains("stiff glass"));
        assertEquals(told, found);
    }
}
