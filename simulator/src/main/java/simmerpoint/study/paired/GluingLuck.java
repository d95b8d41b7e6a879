package simmerpoint.study.paired;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * The same cookers built several times with the same care: every seed glues the panels anew. What a figure spreads over the
 * seeds is the luck of the gluing (and, with few rays, a little of the sampling).
 */
public final class GluingLuck {
    /** Dishes built anew. */
    public static final int DISHES = 8;

    private static final long RAYS = 1L << 13;

    private final List<List<PairedWatts>> built;

    private GluingLuck(List<List<PairedWatts>> built) {
        this.built = built;
    }

    /** Whether any panel of any of them can be glued askew. */
    public static boolean isThere(List<Scenario> scenarios) {
        return scenarios.stream().anyMatch(s -> s.built().hasTiltedPanels());
    }

    /**
     * Builds and traces {@code scenarios} {@value #DISHES} times, with seeds of its own.
     *
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static GluingLuck of(List<Scenario> scenarios, TraceOptions options, Progress progress) {
        TraceOptions few = options.withPrecision(0).withRays(Math.min(RAYS, options.rays()));
        List<List<PairedWatts>> built = new ArrayList<>();
        for (int k = 0; k < DISHES; k++) {
            PartialProgress part = new PartialProgress(progress, (double) k / DISHES, (k + 1.0) / DISHES);
            built.add(PairedStudy.watts(scenarios, few.withSeed(options.seed() + 1000 + k), part));
        }
        return new GluingLuck(built);
    }

    /** The same if any panel can be glued askew. */
    public static Optional<GluingLuck> ifAny(List<Scenario> scenarios, TraceOptions options, Progress progress) {
        return isThere(scenarios) ? Optional.of(of(scenarios, options, progress)) : Optional.empty();
    }

    /** Mean of a figure of all of one building over the buildings. */
    public double mean(ToDoubleFunction<List<PairedWatts>> figure) {
        return Replicates.mean(DISHES, k -> figure.applyAsDouble(built.get(k))).value();
    }

    /** {@code sampled} with its error widened to the spread of that figure. */
    public Estimate widened(Estimate sampled, ToDoubleFunction<List<PairedWatts>> figure) {
        return new Estimate(sampled.value(), Math.max(sampled.standardError(), spread(figure)));
    }

    /** Its standard deviation from building to building. */
    public double spread(ToDoubleFunction<List<PairedWatts>> figure) {
        return Math.sqrt(DISHES)
                * Replicates.mean(DISHES, k -> figure.applyAsDouble(built.get(k)))
                        .standardError();
    }
}
