package simmerpoint.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import simmerpoint.scenario.Problem;
import simmerpoint.scenario.ScenarioException;

/** What a refusal must look like: one printable line that says something. */
final class Sentences {
    private Sentences() {}

    static void check(ScenarioException refused) {
        for (Problem problem : refused.problems()) {
            check(problem.text());
        }
        refused.sentences().forEach(Sentences::check);
    }

    static void check(String sentence) {
        assertTrue(sentence != null && sentence.length() > 8, "says nothing: " + sentence);
        assertTrue(sentence.codePoints().noneMatch(Character::isISOControl), "not one line: " + sentence);
        assertFalse(sentence.contains("Exception") || sentence.contains("null"), "not for a user: " + sentence);
    }
}
