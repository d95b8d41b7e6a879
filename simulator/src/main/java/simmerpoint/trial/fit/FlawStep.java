package simmerpoint.trial.fit;

import java.util.Map;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.values.ScenarioValues;

/**
 * One size of a flaw.
 *
 * @param way in which direction, where there are several
 * @param size SI units or radians; 1 for what is or is not
 * @param numbers what it sets, SI by key
 * @param typed what it sets in words, by key
 */
public record FlawStep(Way way, double size, Map<String, Double> numbers, Map<String, String> typed) {
    /** Which way something is off. */
    public enum Way {
        /** There is only one. */
        ONLY,
        /** Too far from the dish. */
        OUT,
        /** Too near the dish. */
        IN,
        /** To the side. */
        ASIDE
    }

    /** The values with this flaw. */
    ScenarioValues in(CheckedScenario scenario) throws ScenarioException {
        return scenario.values().with(typed).withNumbers(numbers);
    }
}
