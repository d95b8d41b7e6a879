package simmerpoint.study;

import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;

/**
 * Watts of dishes that are tried, each traced once with the same few rays, so that they can be compared in pairs. A dish
 * that cannot be built, stood or kept within the limits on sheet and pan height has none.
 */
final class DesignTrials {
    private final CheckedScenario base;
    private final TraceOptions options;
    private final Progress asked;
    private final Map<DishSketch, Optional<Scenario>> built = new HashMap<>();
    private final Map<DishSketch, Double> watts = new HashMap<>();

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
    Optional<Scenario> allowed(DishSketch sketch, DesignLimits limits) {
        return built.computeIfAbsent(sketch, this::build).filter(limits::allow);
    }

    private Optional<Scenario> build(DishSketch sketch) {
        try {
            return Optional.of(base.with(sketch.keys()).atOneMoment()).filter(Casting::hasRoom);
        } catch (ScenarioException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Watts of one dish; 0 if it is not {@linkplain #allowed allowed}. */
    double watts(DishSketch sketch, DesignLimits limits) {
        return wattsOf(List.of(sketch), limits).get(0);
    }

    /** Watts of several dishes, in their order. */
    List<Double> wattsOf(List<DishSketch> sketches, DesignLimits limits) {
        Map<DishSketch, Scenario> missing = new LinkedHashMap<>();
        for (DishSketch sketch : sketches) {
            if (!watts.containsKey(sketch)) {
                allowed(sketch, limits).ifPresent(scenario -> missing.put(sketch, scenario));
            }
        }
        Iterator<PairedWatts> traced =
                PairedStudy.watts(List.copyOf(missing.values()), options, asked).iterator();
        missing.keySet()
                .forEach(sketch -> watts.put(sketch, traced.next().absorbed().value()));
        return sketches.stream()
                .map(sketch ->
                        allowed(sketch, limits).map(s -> watts.get(sketch)).orElse(0.0))
                .toList();
    }
}
