package simmerpoint.scenario;

import java.util.List;
import java.util.Optional;

/**
 * A scenario that was read and found good.
 *
 * @param scenario what it means
 * @param values of its keys
 * @param warnings what is allowed and yet probably not meant, one sentence each
 * @param timeless what to say to whoever needs the sun of one moment, if the file names a place and neither a time nor
 *     sun.elevation; the scenario then has the usual sun, good for nothing but days and years
 * @param defaults names of the sections that the file leaves out and whose defaults are taken
 */
public record ReadScenario(
        Scenario scenario,
        ScenarioValues values,
        List<String> warnings,
        Optional<ScenarioException> timeless,
        List<String> defaults) {
    /** Keeps its own lists. */
    public ReadScenario {
        warnings = List.copyOf(warnings);
        defaults = List.copyOf(defaults);
    }

    /** The text of the file that says so. */
    public String sourceText() {
        return values.sourceText();
    }

    /** The scenario for work that needs the sun of one moment; refused if the file does not say which. */
    public Scenario atOneMoment() throws ScenarioException {
        if (timeless.isPresent()) {
            throw timeless.get();
        }
        return scenario;
    }
}
