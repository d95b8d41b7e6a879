package simmerpoint.study.likely;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import simmerpoint.scenario.doubts.DrawnCooker;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateWorkers;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.Draws;

/**
 * The cookers that a scenario may turn out to be.
 *
 * @param doubts what is not known exactly
 * @param bits 2^bits cookers
 * @param draws probabilities of the causes
 * @param options rays, seed and threads
 */
public record CookerDraws(ScenarioDoubts doubts, int bits, Draws draws, TraceOptions options) {
    /** 2^{@code bits} cookers by {@code doubts}. */
    public static CookerDraws of(ScenarioDoubts doubts, int bits, TraceOptions options) {
        return new CookerDraws(doubts, bits, Draws.of(doubts.all().size(), bits, options.seed()), options);
    }

    /**
     * The result of {@code work} for every cooker, in the order of the draws; empty where the values of a draw do not go together.
     *
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public <T> List<Optional<T>> each(Function<DrawnCooker, T> work, Progress progress) {
        int cookers = 1 << bits;
        List<Optional<T>> found = new ArrayList<>(Collections.nCopies(cookers, Optional.<T>empty()));
        try (ReplicateWorkers workers = new ReplicateWorkers(Math.min(options.threads(), cookers), cookers, progress)) {
            workers.run(0, 1, (draw, watch) -> {
                found.set(draw, one(draw, work));
                watch.step(1, 1);
            });
        }
        return found;
    }

    private <T> Optional<T> one(int draw, Function<DrawnCooker, T> work) {
        try {
            return doubts.cooker(draws, draw).map(work);
        } catch (ImpossibleSetupException e) {
            return Optional.empty();
        }
    }
}
