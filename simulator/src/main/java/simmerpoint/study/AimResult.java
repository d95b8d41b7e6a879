package simmerpoint.study;

import java.util.List;
import java.util.Optional;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;

/**
 * How exactly a dish must be aimed, and how often. All watts are taken up by the pan, of focused and direct light; of a
 * bare disc they are caught.
 *
 * @param scenario as it was asked
 * @param plan what was asked
 * @param deadOn traced with neither turn nor drift
 * @param asAimed traced as the scenario aims it, by the same rays
 * @param tolerance how far off it may be
 * @param curves drift up, drift sideways, turn up, turn sideways
 * @param maps drift, turn
 * @param way of the sun after the aiming
 * @param minutes until the loss is reached after a dead-on aiming; empty if it is not within {@code deadOnSpell}
 * @param deadOnSpell from a dead-on aiming until the loss is reached, or as long as the way is looked at
 * @param longSpell the same for as long as aiming ahead lasts; without a lead for twice the time
 * @param lead aiming ahead, for the time at neither end of which more than the loss is lost; empty where no loss is reached or no lead makes sense
 * @param options as asked
 * @param run what the work took
 */
public record AimResult(
        Scenario scenario,
        AimPlan plan,
        PairedTrace deadOn,
        PairedWatts asAimed,
        AimTolerance tolerance,
        List<AimCurve> curves,
        List<AimMap> maps,
        SunWay way,
        Optional<Estimate> minutes,
        AimSpell deadOnSpell,
        AimSpell longSpell,
        Optional<AimLead> lead,
        TraceOptions options,
        RunInfo run) {
    /** Keeps its own lists. */
    public AimResult {
        curves = List.copyOf(curves);
        maps = List.copyOf(maps);
    }

    /** How many times longer than a dead-on aiming one ahead of the sun lasts; 0 without a lead. */
    public double stretch() {
        return lead.map(l -> l.spell().minutes() / deadOnSpell.minutes()).orElse(0.0);
    }

    /** Watts of the dead-on aim. */
    public Estimate deadOnWatts() {
        return deadOn.watts().absorbed();
    }

    /** The best place of the two turn curves, if it is surely better than dead on: by over 1 % and 3 standard errors. */
    public Optional<Best> betterThanDeadOn() {
        Optional<Best> best = Optional.empty();
        double most = 0;
        for (AimCurve curve : curves) {
            double middle = curve.points().stream()
                    .filter(p -> p.radians() == 0)
                    .mapToDouble(p -> p.watts().value())
                    .findFirst()
                    .orElse(Double.POSITIVE_INFINITY);
            for (AimCurve.Point p : curve.turn() ? curve.points() : List.<AimCurve.Point>of()) {
                double gain = p.watts().value() - middle;
                if (gain > Math.max(0.01 * middle, 3 * p.watts().standardError()) && gain > most) {
                    most = gain;
                    best = Optional.of(new Best(curve.side(), p.radians(), gain / middle));
                }
            }
        }
        return best;
    }

    /**
     * An aim that gives more than dead on does.
     *
     * @param side whether turned sideways; else up or down
     * @param radians turned, rad: above 0 up or right
     * @param gainShare of the watts dead on
     */
    public record Best(boolean side, double radians, double gainShare) {}

    /**
     * What the work took.
     *
     * @param rays of the dead-on trace
     * @param curveRays of each point of the curves
     * @param mapRays of each point of the maps
     * @param aims traced for the maps
     * @param casts of light for them: aims under the same light share it
     * @param threads used
     * @param seconds for everything
     */
    public record RunInfo(long rays, long curveRays, long mapRays, int aims, int casts, int threads, double seconds) {}
}
