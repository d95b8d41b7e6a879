package simmerpoint.study.build;

import java.util.List;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * What the planned cooker does.
 *
 * @param watts cooking power; of a bare disc, caught, W
 */
public record BuildTrace(Estimate watts) {
    /** Rays where none are asked for: prices and tolerances need no more. */
    public static final long USUAL_RAYS = 1L << 15;

    /**
     * Traces it.
     *
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static BuildTrace run(Scenario scenario, TraceOptions options, Progress progress) {
        PairedWatts watts =
                PairedStudy.watts(List.of(scenario), options, progress).get(0);
        return new BuildTrace(watts.useful());
    }
}
