package simmerpoint.safety;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import simmerpoint.pan.Pan;
import simmerpoint.safety.eyes.Glare;
import simmerpoint.safety.field.FieldStudy;
import simmerpoint.safety.field.YardBoxes;
import simmerpoint.safety.field.YardLight;
import simmerpoint.safety.kitchen.KitchenRisks;
import simmerpoint.safety.parked.ParkedResult;
import simmerpoint.safety.parked.ParkedStudy;
import simmerpoint.safety.places.LookedAt;
import simmerpoint.safety.places.LookedAtPlaces;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

/** Finds what one cooker can burn, light or blind. */
public final class SafetyStudy {
    /** Rays where nothing else is asked: the reach of light is then known to a per cent or two. */
    public static final long USUAL_RAYS = 1L << 18;

    /** Share of the work that the field is. */
    private static final double FIELD = 0.5;

    private SafetyStudy() {}

    /**
     * The light of a cooker as it is aimed, without anything else.
     *
     * @throws simmerpoint.study.trace.ImpossibleSetupException if the pan would stand in the mirror
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static CookerLight light(Scenario scenario, TraceOptions options, Progress progress) {
        boolean pan = scenario.target() instanceof Pan;
        return CookerLight.of(FieldStudy.run(
                scenario, options, YardBoxes.of(scenario), pan ? List.of(true, false) : List.of(false), progress));
    }

    /**
     * The risks of a scenario, which is that of one moment.
     *
     * @param seasons whether the parked dish is followed on days of all seasons, not only on the scenario's own
     * @throws simmerpoint.study.trace.ImpossibleSetupException if the pan would stand in the mirror
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static SafetyResult run(CheckedScenario read, boolean seasons, TraceOptions options, Progress progress) {
        TraceOptions few = options.withRays(Math.min(TraceOptions.DEFAULT_RAYS, options.rays()));
        return run(read, () -> TraceStudy.run(read.scenario(), few, Progress.NONE), seasons, options, progress);
    }

    /**
     * The same where somebody else traces it.
     *
     * @param trace of the scenario; asked for at the end, and only where there is a pan
     * @param seasons whether the parked dish is followed on days of all seasons, not only on the scenario's own
     * @throws simmerpoint.study.trace.ImpossibleSetupException if the pan would stand in the mirror
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static SafetyResult run(
            CheckedScenario read,
            Supplier<TraceResult> trace,
            boolean seasons,
            TraceOptions options,
            Progress progress) {
        long start = System.nanoTime();
        Scenario scenario = read.scenario();
        CookerLight light = light(scenario, options, (done, detail) -> progress.report(FIELD * done, detail));
        double seconds = (System.nanoTime() - start) * 1e-9;
        List<LookedAt> places = LookedAtPlaces.of(
                read.values(), light.standing().light(), light.taken().light());
        ParkedResult parked = ParkedStudy.run(
                scenario,
                places.stream().map(at -> at.surface(scenario)).toList(),
                seasons,
                options,
                (done, detail) -> progress.report(FIELD + (1 - FIELD) * done, detail));
        long rays = (long) ReplicateCaster.REPLICATES << ReplicateCaster.bitsFor(options.rays());
        return new SafetyResult(
                scenario,
                light,
                places,
                parked,
                Glare.of(scenario),
                kitchen(scenario, trace, light.standing().light()),
                options.seed(),
                new SafetyResult.RunInfo(rays, options.threads(), seconds));
    }

    private static Optional<KitchenRisks> kitchen(Scenario scenario, Supplier<TraceResult> trace, YardLight light) {
        return scenario.target() instanceof Pan ? KitchenRisks.of(trace.get(), light) : Optional.empty();
    }
}
