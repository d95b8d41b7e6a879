package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;

/** Helps tests of wrong scenarios: a good one, and what must be said of a wrong one. */
final class BadInput {
    /** Line 1 title, 2 dish, 3 diameter, 4 focal-length, 5 hub, 6 gap, 7 surface, 8 mirror, 9 slope-error, 10 sun, … */
    static final String GOOD = """
            title: test
            dish:
              diameter: 1.2 m
              focal-length: 0.8 m
              hub: 60 mm
              gap: 0 mm
              surface: {cut: flat-rings, sectors: 24, rings: 6}
            mirror:
              slope-error: 5 mrad
            sun:
              elevation: 50°
              beam: 850 W/m²
            pan:
              diameter: 24 cm
            stand:
              pull-back: 0 cm
            """;

    private BadInput() {}

    static String with(String line, String replacement) {
        assertTrue(GOOD.contains(line), "the good scenario has no " + line);
        return GOOD.replace(line, replacement);
    }

    static CheckedScenario read(String text) throws ScenarioException {
        return ScenarioReader.parse("t.yaml", text, Path.of("src/test/resources"));
    }

    static ScenarioException refused(String text) {
        return assertThrows(ScenarioException.class, () -> read(text), text);
    }

    /** The text is refused with exactly one problem, at that line and key, whose sentence has those words. */
    static void assertRefused(String text, int line, String key, String words) {
        ScenarioException e = refused(text);
        assertEquals(1, e.problems().size(), String.join("\n", e.sentences()));
        Problem problem = e.problems().get(0);
        assertEquals(line, problem.line(), e.getMessage());
        assertEquals(key, problem.key(), e.getMessage());
        assertTrue(e.getMessage().contains(words), e.getMessage());
        assertOneSentence(e.getMessage());
    }

    static void assertOneSentence(String message) {
        assertTrue(message.startsWith("t.yaml"), message);
        assertTrue(message.length() < 700 && !message.contains("\n") && !message.contains("Exception"), message);
    }
}
