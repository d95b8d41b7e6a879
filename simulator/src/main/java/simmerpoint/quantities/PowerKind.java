package simmerpoint.quantities;

import java.util.List;
import simmerpoint.scenario.Scenario;

/** What the watts of a study are: cooking power of a pan, caught light of a bare disc. */
final class PowerKind {
    /** The words there are. */
    static final List<String> WORDS = List.of("cooking", "caught");

    private PowerKind() {}

    static String of(Scenario scenario) {
        return WORDS.get(scenario.cooking().isPresent() ? 0 : 1);
    }
}
