package simmerpoint.viewer.live;

import java.util.Optional;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.PanelWatts;
import simmerpoint.study.light.RaySample;

/**
 * What is known of single panels and rays.
 *
 * @param scenario what was asked for last
 * @param panels the newest figures panel by panel; they may still be those of an earlier scenario; empty before the first
 * @param sample a few traced rays
 * @param refusal why nothing is known of this scenario, in one sentence; empty if something is
 */
public record PanelState(Scenario scenario, Optional<PanelWatts> panels, RaySample sample, Optional<String> refusal) {
    /** Whether the figures are those of the scenario asked for. */
    public boolean current() {
        return refusal.isEmpty()
                && panels.filter(p -> p.scenario().equals(scenario)).isPresent();
    }
}
