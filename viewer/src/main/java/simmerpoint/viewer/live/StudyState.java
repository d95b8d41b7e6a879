package simmerpoint.viewer.live;

import java.util.Optional;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimTimes;
import simmerpoint.study.pan.PanResult;

/**
 * How far the slower studies have come.
 *
 * @param scenario what they are asked for; empty before the first
 * @param pan the newest study of where the pan stands for what; may be that of an earlier scenario
 * @param times when to aim again, the quick part of the study of aiming; may be that of an earlier scenario
 * @param aim the newest whole study of how exactly and how often to aim; may be that of an earlier scenario
 * @param working whether something is being worked on
 * @param done share of that work that is done, 0 to 1
 * @param refusal why one of them is missing, in one sentence
 */
public record StudyState(
        Optional<Scenario> scenario,
        Optional<PanResult> pan,
        Optional<AimTimes> times,
        Optional<AimResult> aim,
        boolean working,
        double done,
        Optional<String> refusal) {
    /** Before anything was asked. */
    public static final StudyState NOTHING_YET = new StudyState(
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), false, 0, Optional.empty());

    /** The study of the pan's places, if it is that of {@code wanted}. */
    public Optional<PanResult> panOf(Scenario wanted) {
        return pan.filter(p -> p.base().scenario().equals(wanted));
    }

    /** When to aim again, if that is said of {@code wanted}. */
    public Optional<AimTimes> timesOf(Scenario wanted) {
        return times.filter(t -> t.scenario().equals(wanted));
    }

    /** The study of aiming, if it is that of {@code wanted}. */
    public Optional<AimResult> aimOf(Scenario wanted) {
        return aim.filter(a -> a.scenario().equals(wanted));
    }

    /** Whether all that is seen of them in the window is there for {@code wanted}, or will not come. */
    public boolean shows(Scenario wanted) {
        boolean mine = scenario.filter(wanted::equals).isPresent();
        boolean seen = timesOf(wanted).isPresent()
                && (panOf(wanted).isPresent() || wanted.cooking().isEmpty());
        return mine && (seen || !working);
    }

    StudyState withPan(Optional<PanResult> newPan) {
        return new StudyState(scenario, newPan, times, aim, working, done, refusal);
    }

    StudyState withTimes(Optional<AimTimes> newTimes) {
        return new StudyState(scenario, pan, newTimes, aim, working, done, refusal);
    }

    StudyState withAim(Optional<AimResult> newAim) {
        return new StudyState(scenario, pan, times, newAim, working, done, refusal);
    }

    StudyState at(double share) {
        return new StudyState(scenario, pan, times, aim, true, share, refusal);
    }

    StudyState atRest(double share, Optional<String> why) {
        return new StudyState(scenario, pan, times, aim, false, share, why);
    }
}
