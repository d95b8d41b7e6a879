package simmerpoint.study.aim;

import java.util.List;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

/**
 * How exactly a dish must be aimed and how often, counted from a dead-on aim. Everything is traced with one seed: the dead-on
 * aim and the scenario's own with all rays, tolerances as {@link AimTolerance} does, times and means with an eighth,
 * curves and maps with a thirty-second of the rays at each aim (4,096 at least, but no more than asked).
 */
public final class AimStudy {
    private static final long LEAST_RAYS = 1 << 12;
    private static final long FOR_SPELLS = 8;
    private static final long FOR_DRAWINGS = 32;

    private static final double TRACED = 0.36;
    private static final double TOLERATED = 0.73;
    private static final double TIMES_FOUND = 0.8;

    private static final double TIMED = 0.55;
    private static final double DRAWN = 0.65;
    private static final double TIMED_ALONE = 0.8;

    private AimStudy() {}

    /**
     * Studies {@code scenario}.
     *
     * @throws ImpossibleSetupException if the scenario cannot stand as it says, or its mirrors throw nothing on the target
     *     even when the dish is aimed dead on
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static AimResult run(Scenario scenario, AimPlan plan, TraceOptions asked, Progress progress) {
        AimTimes times = times(scenario, plan, asked, new PartialProgress(progress, 0, TIMED));
        return drawn(times, new PartialProgress(progress, TIMED, 1));
    }

    /**
     * The same with what is likely of a dead-on aim over all other doubts, and how to find the focus of the finished dish.
     *
     * @param maps whether maps are wanted, which are half of the work
     */
    public static AimResult run(
            CheckedScenario read, AimPlan plan, TraceOptions asked, boolean maps, Progress progress) {
        AimTimes times =
                times(read.scenario(), plan, asked, new PartialProgress(progress, 0, maps ? TIMED : TIMED_ALONE));
        PartialProgress rest = new PartialProgress(progress, maps ? TIMED : TIMED_ALONE, 1);
        return (maps ? drawn(times, rest) : curved(times, rest))
                .withLikely(LikelyStudy.run(
                        read,
                        LikelyStudy.FOR_RANGE,
                        asked,
                        drawn -> drawn.withAim(drawn.aim().deadOn()),
                        Progress.NONE))
                .withFirstLight(FirstLight.of(read, asked));
    }

    /** When to aim again, and how far off one may be: the quick part of {@link #run}, which throws the same. */
    public static AimTimes times(Scenario scenario, AimPlan plan, TraceOptions asked, Progress progress) {
        long start = System.nanoTime();
        Scenario straight = scenario.withAim(scenario.aim().deadOn());
        TraceOptions options = withEnoughRays(straight, asked, new PartialProgress(progress, 0, TRACED / 2));
        List<PairedTrace> traced = PairedStudy.traces(
                List.of(straight, scenario), options, new PartialProgress(progress, TRACED / 2, TRACED));
        PairedTrace deadOn = traced.get(0);
        if (!(deadOn.watts().caught().value() > 0)) {
            throw new ImpossibleSetupException(
                    "no light from the mirrors is caught even when the dish is aimed dead on; the command trace tells where it goes");
        }
        AimTolerance tolerance = AimTolerance.of(
                        List.of(straight), plan.lossShare(), options, new PartialProgress(progress, TRACED, TOLERATED))
                .get(0);
        AimAgain timed =
                AimAgain.of(scenario, plan.lossShare(), options, new PartialProgress(progress, TOLERATED, TIMES_FOUND));
        SunTrack way = timed.way();
        TraceOptions forSpells = fewer(options, FOR_SPELLS);
        PairedWatts again =
                PairedStudy.watts(List.of(straight), forSpells, Progress.NONE).get(0);
        AimIntervals.Found intervals = new AimIntervals(again, way, plan.lossShare())
                .find(timed.minutes(), forSpells, new PartialProgress(progress, TIMES_FOUND, 1));
        return new AimTimes(
                scenario,
                plan,
                deadOn,
                traced.get(1).watts(),
                tolerance,
                way,
                timed.minutes(),
                intervals.single(),
                intervals.twice(),
                intervals.lead(),
                options,
                (System.nanoTime() - start) * 1e-9);
    }

    /**
     * The slow part of {@link #run}: curves and maps around what the quick part found.
     *
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static AimResult drawn(AimTimes times, Progress progress) {
        long start = System.nanoTime();
        double curves = (DRAWN - TIMED) / (1 - TIMED);
        AimResult curved = curved(times, new PartialProgress(progress, 0, curves));
        TraceOptions forMaps = fewer(times.options(), FOR_DRAWINGS);
        AimSweep.Maps maps = new AimSweep(times.tolerance()).maps(forMaps, new PartialProgress(progress, curves, 1));
        return curved.withMaps(
                maps.maps(),
                new AimResult.RunInfo(
                        curved.run().rays(),
                        curved.run().curveRays(),
                        forMaps.rays(),
                        maps.aims(),
                        maps.casts(),
                        curved.run().threads(),
                        times.seconds() + (System.nanoTime() - start) * 1e-9));
    }

    /** The curves alone, without maps. */
    private static AimResult curved(AimTimes times, Progress progress) {
        long start = System.nanoTime();
        TraceOptions forCurves = fewer(times.options(), FOR_DRAWINGS);
        List<AimCurve> curves = new AimSweep(times.tolerance()).curves(forCurves, progress);
        return new AimResult(
                times,
                curves,
                List.of(),
                new AimResult.RunInfo(
                        times.deadOn().trace().run().rays(),
                        forCurves.rays(),
                        0,
                        0,
                        0,
                        times.options().threads(),
                        times.seconds() + (System.nanoTime() - start) * 1e-9));
    }

    /** With a wanted precision, so many rays as the dead-on aim needs for it. */
    private static TraceOptions withEnoughRays(Scenario straight, TraceOptions asked, Progress progress) {
        if (!(asked.precision() > 0)) {
            return asked;
        }
        TraceResult traced = TraceStudy.run(straight, asked, progress);
        return asked.withPrecision(0).withRays(traced.run().rays());
    }

    private static TraceOptions fewer(TraceOptions options, long divisor) {
        return options.withRays(Math.max(Math.min(LEAST_RAYS, options.rays()), options.rays() / divisor));
    }
}
