package simmerpoint.study.build;

import java.util.List;
import java.util.Optional;
import simmerpoint.dish.cut.MeasuredRibs;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * What a cooker does that is built as the scenario says.
 *
 * @param watts cooking power; of a bare disc, caught, W
 * @param ribs what its ribs cost, if they were measured
 */
public record BuildTrace(Estimate watts, Optional<RibsAsBuilt> ribs) {
    /** Rays where none are asked for: prices and tolerances need no more. */
    public static final long USUAL_RAYS = 1L << 15;

    /**
     * Traces it.
     *
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static BuildTrace run(Scenario scenario, TraceOptions options, Progress progress) {
        TraceOptions equal = options.withPrecision(0);
        if (scenario.dish().cut() instanceof MeasuredRibs ribs) {
            RibsAsBuilt found = RibsAsBuilt.of(scenario, ribs, equal, progress);
            return new BuildTrace(found.built(), Optional.of(found));
        }
        return new BuildTrace(
                PairedStudy.watts(List.of(scenario), equal, progress).get(0).useful(), Optional.empty());
    }
}
