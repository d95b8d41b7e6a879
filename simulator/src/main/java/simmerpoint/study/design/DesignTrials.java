package simmerpoint.study.design;

import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
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
    private final CheckedScenario base;
    private final TraceOptions options;
    private final Progress asked;
    private final Map<DishCandidate, Optional<Scenario>> built = new HashMap<>();
    private final Map<DishCandidate, Double> watts = new HashMap<>();

    /** With the rays of {@code options}; {@code asked} is asked whether to go on. */
    DesignTrials(CheckedScenario base, TraceOptions options, Progress asked) {
        this.base = base;
        this.options = options;
        this.asked = asked;
    }

    /** Dishes traced so far. */
    int traced() {
        return watts.size();
    }

    /** The scenario with that dish, if it can be built, its pan does not stand in the mirror and the limits allow it. */
    Optional<Scenario> allowed(DishCandidate candidate, DesignLimits limits) {
        return built.computeIfAbsent(candidate, this::build).filter(limits::allow);
    }

    private Optional<Scenario> build(DishCandidate candidate) {
        try {
            return Optional.of(CheckedScenario.scenario(base.values().with(candidate.keys())))
                    .filter(ReplicateCaster::hasRoom);
        } catch (ScenarioException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Watts of one dish, see {@link PairedWatts#useful}; minus infinity if it is not {@linkplain #allowed allowed}. */
    double watts(DishCandidate candidate, DesignLimits limits) {
        return wattsOf(List.of(candidate), limits).get(0);
    }

    /** Watts of several dishes, in their order. */
    List<Double> wattsOf(List<DishCandidate> candidates, DesignLimits limits) {
        Map<DishCandidate, Scenario> missing = new LinkedHashMap<>();
        for (DishCandidate candidate : candidates) {
            if (!watts.containsKey(candidate)) {
                allowed(candidate, limits).ifPresent(scenario -> missing.put(candidate, scenario));
            }
        }
        Iterator<PairedWatts> traced =
                PairedStudy.watts(List.copyOf(missing.values()), options, asked).iterator();
        missing.keySet()
                .forEach(
                        candidate -> watts.put(candidate, traced.next().useful().value()));
        return candidates.stream()
                .map(candidate -> allowed(candidate, limits)
                        .map(s -> watts.get(candidate))
                        .orElse(Double.NEGATIVE_INFINITY))
                .toList();
    }
}
