package simmerpoint.scenario;

import java.util.List;

/**
 * A scenario that was read and found good.
 *
 * @param scenario its values
 * @param sourceText the text it was read from
 * @param warnings what is allowed and yet probably not meant, one sentence each
 */
public record ReadScenario(Scenario scenario, String sourceText, List<String> warnings) {
    /** Keeps its own list. */
    public ReadScenario {
        warnings = List.copyOf(warnings);
    }
}
