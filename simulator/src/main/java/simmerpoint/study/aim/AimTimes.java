package simmerpoint.study.aim;

import java.util.Optional;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.TraceOptions;

/**
 * When a dish must be aimed again, and how far off it may be. All watts are cooking power; of a bare disc they are caught.
 *
 * @param scenario as it was asked
 * @param plan what was asked
 * @param deadOn traced with neither turn nor drift
 * @param asAimed traced as the scenario aims it, by the same rays
 * @param tolerance how far off it may be
 * @param way of the sun after the aiming
 * @param minutes until the loss is reached after a dead-on aiming, see {@link AimAgain}; empty if it is not within
 *     {@code deadOnInterval}
 * @param deadOnInterval from a dead-on aiming until the loss is reached, or as long as the way is looked at
 * @param longInterval the same for as long as aiming ahead lasts; without a lead for twice the time
 * @param lead aiming ahead, for the time at neither end of which more than the loss is lost; empty where no loss is
 *     reached or no lead makes sense
 * @param options as asked
 * @param seconds what the work took
 */
public record AimTimes(
        Scenario scenario,
        AimPlan plan,
        PairedTrace deadOn,
        PairedWatts asAimed,
        AimTolerance tolerance,
        SunTrack way,
        Optional<Estimate> minutes,
        AimInterval deadOnInterval,
        AimInterval longInterval,
        Optional<AimLead> lead,
        TraceOptions options,
        double seconds) {
    /** How many times longer than a dead-on aiming one ahead of the sun lasts; 0 without a lead. */
    public double stretch() {
        return lead.map(l -> l.interval().minutes() / deadOnInterval.minutes()).orElse(0.0);
    }

    /** Watts of the dead-on aim. */
    public Estimate deadOnWatts() {
        return deadOn.watts().useful();
    }
}
