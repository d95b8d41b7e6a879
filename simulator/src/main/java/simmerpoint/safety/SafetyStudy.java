package simmerpoint.safety;

import java.util.List;
import simmerpoint.pan.Pan;
import simmerpoint.safety.field.FieldStudy;
import simmerpoint.safety.field.YardBoxes;
import simmerpoint.safety.field.YardLight;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;

/** Finds what one cooker can burn, light or blind. */
public final class SafetyStudy {
    /** Rays where nothing else is asked: the reach of light is then known to a per cent or two. */
    public static final long USUAL_RAYS = 1L << 19;

    private SafetyStudy() {}

    /**
     * The risks of {@code scenario}.
     *
     * @throws simmerpoint.study.trace.ImpossibleSetupException if the pan would stand in the mirror
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static SafetyResult run(Scenario scenario, TraceOptions options, Progress progress) {
        long start = System.nanoTime();
        boolean pan = scenario.target() instanceof Pan;
        List<YardLight> lights = FieldStudy.run(
                scenario, options, YardBoxes.of(scenario), pan ? List.of(true, false) : List.of(false), progress);
        double seconds = (System.nanoTime() - start) * 1e-9;
        YardRisks standing = YardRisks.of(lights.get(0));
        YardRisks taken = pan ? YardRisks.of(lights.get(1)) : standing;
        long rays = (long) ReplicateCaster.REPLICATES << ReplicateCaster.bitsFor(options.rays());
        return new SafetyResult(
                scenario, standing, taken, options.seed(), new SafetyResult.RunInfo(rays, options.threads(), seconds));
    }
}
