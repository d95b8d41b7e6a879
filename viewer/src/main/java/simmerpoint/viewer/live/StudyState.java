package simmerpoint.viewer.live;

import java.util.Optional;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.PanResult;

/**
 * How far the slower studies have come.
 *
 * @param scenario what they are asked for; empty before the first
 * @param pan the newest study of where the pan stands for what; may be that of an earlier scenario
 * @param working whether something is being worked on
 * @param done share of that work that is done, 0 to 1
 * @param refusal why there is no study, in one sentence
 */
public record StudyState(
        Optional<Scenario> scenario, Optional<PanResult> pan, boolean working, double done, Optional<String> refusal) {
    /** Before anything was asked. */
    public static final StudyState NOTHING_YET =
            new StudyState(Optional.empty(), Optional.empty(), false, 0, Optional.empty());

    /** The study of the pan's places, if it is that of {@code wanted}. */
    public Optional<PanResult> panOf(Scenario wanted) {
        return pan.filter(p -> p.base().scenario().equals(wanted));
    }
}
