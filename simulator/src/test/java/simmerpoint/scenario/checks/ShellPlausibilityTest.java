package simmerpoint.scenario.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.scenario.file.ScenarioReader;

/** Measures that were taken from the wrong end, twice the same, or too small, and a mount too low. */
class ShellPlausibilityTest {
    private static List<String> notes(String dish, String more) throws Exception {
        String text = "dish: " + dish + "\nsun: {elevation: 50°, beam: 800 W/m²}\npan: {diameter: 16 cm}\n" + more;
        return ScenarioReader.parse("t.yaml", text, Path.of(".")).warnings().stream()
                .filter(note -> note.startsWith("dish.surface") || note.startsWith("stand.tripod-height"))
                .toList();
    }

    private static List<String> shell(String measures) throws Exception {
        return notes("{surface: {cut: off-axis-shell, " + measures + "}}", "");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "width: 75 cm, height: 83 cm, depth: 68 mm, deepest-at: 45 cm|would make the other end the near one",
                "width: 75 cm, height: 83 cm, depth: 68 mm, deepest-at: 60 cm|would make the other end the near one",
                "width: 75 cm, height: 83 cm, depth: 68 mm, deepest-at: 20 cm|measure again",
                "width: 75 cm, height: 83 cm, depth: 68 mm, deepest-at: 95 cm|measure again",
                "width: 83 cm, height: 83 cm, depth: 68 mm|width equals height",
                "width: 75 cm, height: 83 cm, depth: 5 mm|1 mm of depth moves it by 1.27 m"
            })
    void whatIsHardlyRight(String measures, String said) throws Exception {
        List<String> notes = shell(measures);
        assertEquals(1, notes.size(), notes.toString());
        assertTrue(notes.get(0).contains(said), notes.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "width: 75 cm, height: 83 cm, depth: 68 mm",
                "width: 75 cm, height: 83 cm, depth: 68 mm, deepest-at: 38 cm",
                "width: 75 cm, height: 83 cm, depth: 68 mm, deepest-at: 35 cm, near-end: up",
                "width: 83 cm ± 0.5 mm, height: 84 cm ± 0.5 mm, depth: 68 mm"
            })
    void whatIsRight(String measures) throws Exception {
        assertEquals(List.of(), shell(measures));
    }

    /** A flat dish 1 m across, 50° up, has its lower edge 50 cm · cos 50° = 32 cm under the mount, and higher by its depth. */
    @Test
    void aDishInTheGround() throws Exception {
        String dish = "{diameter: 100 cm, focal-length: 500 cm, surface: {cut: smooth}}";
        assertEquals(List.of(), notes(dish, "stand: {tripod-height: 60 cm}\n"));
        List<String> notes = notes(dish, "stand: {tripod-height: 10 cm}\n");
        assertEquals(1, notes.size(), notes.toString());
        assertTrue(notes.get(0).contains("lower edge is 21 cm in the ground"), notes.toString());
        assertTrue(notes.get(0).contains("at least 32 cm"), notes.toString());
    }
}
