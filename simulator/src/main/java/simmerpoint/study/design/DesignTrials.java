package simmerpoint.study.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.dish.PanelSize;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.ScenarioValues;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;

/**
 * Watts of dishes that are tried, each traced once with the same few rays, so that they can be compared in pairs. A dish
 * that cannot be built, stood or kept within the limits on sheet and pan height has none.
 */
final class DesignTrials {
    private final ScenarioValues base;
    private final TraceOptions options;
    private final Progress asked;
    private final Map<DishCandidate, Optional<Scenario>> built = new HashMap<>();
    private final Map<DishCandidate, Double> watts = new HashMap<>();

    /** With the rays of {@code options}; {@code asked} is asked whether to go on. */
    DesignTrials(ScenarioValues base, TraceOptions options, Progress asked) {
        this.base = base;
        this.options = options;
        this.asked = asked;
    }

    /** Dishes traced so far. */
    int traced() {
        return watts.size();
    }

    /** The scenario with that dish, if it can be built and its pan does not stand in the mirror. */
    Optional<Scenario> scenario(DishCandidate candidate) {
        return built.computeIfAbsent(candidate, this::build);
    }

    private Optional<Scenario> build(DishCandidate candidate) {
        try {
            return Optional.of(base.with(candidate.keys()).check().atOneMoment())
                    .filter(ReplicateCaster::hasRoom);
        } catch (ScenarioException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Whether the dish can be built and keeps to the limits on sheet and pan height. */
    boolean allowed(DishCandidate candidate, DesignLimits limits) {
        Optional<Scenario> scenario = scenario(candidate);
        return scenario.isPresent()
                && fitsSheet(scenario.get(), limits)
                && scenario.get().panHeightMetres() <= most(limits);
    }

    private static double most(DesignLimits limits) {
        return limits.highestPanMetres().orElse(Double.POSITIVE_INFINITY);
    }

    private static boolean fitsSheet(Scenario scenario, DesignLimits limits) {
        if (limits.sheet().isEmpty()) {
            return true;
        }
        Optional<PanelSize> size = scenario.dish().largestPanel();
        return size.isPresent()
                && limits.sheet().get().holds(size.get().rimMetres(), size.get().ribMetres());
    }

    /** Watts of one dish; 0 if it is not {@linkplain #allowed allowed}. */
    double watts(DishCandidate candidate, DesignLimits limits) {
        return wattsOf(List.of(candidate), limits).get(0);
    }

    /** Watts of several dishes, in their order. */
    List<Double> wattsOf(List<DishCandidate> candidates, DesignLimits limits) {
        Map<DishCandidate, Scenario> missing = new LinkedHashMap<>();
        for (DishCandidate candidate : candidates) {
            if (!watts.containsKey(candidate) && allowed(candidate, limits)) {
                missing.put(candidate, scenario(candidate).orElseThrow());
            }
        }
        List<PairedWatts> traced = PairedStudy.watts(List.copyOf(missing.values()), options, asked);
        int k = 0;
        for (DishCandidate candidate : missing.keySet()) {
            watts.put(candidate, traced.get(k++).absorbed().value());
        }
        List<Double> out = new ArrayList<>();
        for (DishCandidate candidate : candidates) {
            out.add(allowed(candidate, limits) ? watts.get(candidate) : 0.0);
        }
        return out;
    }
}
