package simmerpoint.study.aim;

import java.util.List;
import java.util.Optional;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.TraceOptions;

/**
 * How exactly a dish must be aimed, and how often. All watts are cooking power; of a bare disc they are caught.
 *
 * @param times when to aim again, and why
 * @param curves drift up, drift sideways, turn up, turn sideways
 * @param maps drift, turn; empty if they were not wanted
 * @param run what the work took
 * @param deadOnLikely what is likely of a dead-on aim over all other doubts, if that was worked out
 * @param firstLight how to find the focus of the finished dish, if that was worked out and the mirror has room for it
 */
public record AimResult(
        AimTimes times,
        List<AimCurve> curves,
        List<AimMap> maps,
        RunInfo run,
        Optional<LikelyResult> deadOnLikely,
        Optional<FirstLight> firstLight) {
    /** Without a look at doubts. */
    AimResult(AimTimes times, List<AimCurve> curves, List<AimMap> maps, RunInfo run) {
        this(times, curves, maps, run, Optional.empty(), Optional.empty());
    }

    /** Keeps its own lists. */
    public AimResult {
        curves = List.copyOf(curves);
        maps = List.copyOf(maps);
    }

    /** The same with maps. */
    AimResult withMaps(List<AimMap> drawn, RunInfo took) {
        return new AimResult(times, curves, drawn, took, deadOnLikely, firstLight);
    }

    /** The same with what is likely of a dead-on aim. */
    AimResult withLikely(LikelyResult deadOn) {
        return new AimResult(times, curves, maps, run, Optional.of(deadOn), firstLight);
    }

    /** The same with how to find the focus. */
    AimResult withFirstLight(Optional<FirstLight> found) {
        return new AimResult(times, curves, maps, run, deadOnLikely, found);
    }

    /** {@link AimTimes#scenario}. */
    public Scenario scenario() {
        return times.scenario();
    }

    /** {@link AimTimes#plan}. */
    public AimPlan plan() {
        return times.plan();
    }

    /** {@link AimTimes#deadOn}. */
    public PairedTrace deadOn() {
        return times.deadOn();
    }

    /** {@link AimTimes#asAimed}. */
    public PairedWatts asAimed() {
        return times.asAimed();
    }

    /** {@link AimTimes#tolerance}. */
    public AimTolerance tolerance() {
        return times.tolerance();
    }

    /** {@link AimTimes#way}. */
    public SunTrack way() {
        return times.way();
    }

    /** {@link AimTimes#minutes}. */
    public Optional<Estimate> minutes() {
        return times.minutes();
    }

    /** {@link AimTimes#deadOnInterval}. */
    public AimInterval deadOnInterval() {
        return times.deadOnInterval();
    }

    /** {@link AimTimes#longInterval}. */
    public AimInterval longInterval() {
        return times.longInterval();
    }

    /** {@link AimTimes#lead}. */
    public Optional<AimLead> lead() {
        return times.lead();
    }

    /** {@link AimTimes#options}. */
    public TraceOptions options() {
        return times.options();
    }

    /** {@link AimTimes#stretch}. */
    public double stretch() {
        return times.stretch();
    }

    /** {@link AimTimes#deadOnWatts}. */
    public Estimate deadOnWatts() {
        return times.deadOnWatts();
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
     * @param mapRays of each point of the maps; 0 without maps
     * @param aims traced for the maps
     * @param casts of light for them: aims under the same light share it
     * @param threads used
     * @param seconds for everything
     */
    public record RunInfo(long rays, long curveRays, long mapRays, int aims, int casts, int threads, double seconds) {}
}
