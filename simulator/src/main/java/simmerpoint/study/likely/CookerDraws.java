package simmerpoint.study.likely;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.Function;
import simmerpoint.scenario.doubts.DrawnCooker;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateWorkers;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.Draws;

/** The cookers that a scenario may turn out to be. Each is made when it is first asked for, and then kept. */
public final class CookerDraws {
    private final ScenarioDoubts doubts;
    private final Draws draws;
    private final TraceOptions options;
    private final AtomicReferenceArray<Optional<DrawnCooker>> made;

    private CookerDraws(ScenarioDoubts doubts, int bits, Draws draws, TraceOptions options) {
        this.doubts = doubts;
        this.draws = draws;
        this.options = options;
        made = new AtomicReferenceArray<>(1 << bits);
    }

    /** 2^{@code bits} cookers by {@code doubts}. */
    public static CookerDraws of(ScenarioDoubts doubts, int bits, TraceOptions options) {
        return new CookerDraws(doubts, bits, Draws.of(doubts.all().size(), bits, options.seed()), options);
    }

    /** What is not known exactly. */
    public ScenarioDoubts doubts() {
        return doubts;
    }

    /** Probabilities of the causes. */
    public Draws draws() {
        return draws;
    }

    /** Rays, seed and threads. */
    public TraceOptions options() {
        return options;
    }

    /**
     * The result of {@code work} for every cooker, in the order of the draws; empty where the values of a draw do not go together.
     *
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public <T> List<Optional<T>> each(Function<DrawnCooker, T> work, Progress progress) {
        int cookers = made.length();
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
            return cooker(draw).map(work);
        } catch (ImpossibleSetupException e) {
            return Optional.empty();
        }
    }

    private Optional<DrawnCooker> cooker(int draw) {
        Optional<DrawnCooker> known = made.get(draw);
        if (known == null) {
            known = doubts.cooker(draws, draw);
            made.set(draw, known);
        }
        return known;
    }
}
