package simmerpoint.study;

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

/**
 * Watts of dishes that are tried, each traced once with the same few rays, so that they can be compared in pairs. A dish
 * that cannot be built, stood or kept within the limits on sheet and pan height has none.
 */
final class DesignTrials {
    private final ScenarioValues base;
    private final TraceOptions options;
    private final Progress asked;
    private final Map<DishSketch, Optional<Scenario>> built = new HashMap<>();
    private final Map<DishSketch, Double> watts = new HashMap<>();

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
    Optional<Scenario> scenario(DishSketch sketch) {
        return built.computeIfAbsent(sketch, this::build);
    }

    private Optional<Scenario> build(DishSketch sketch) {
        try {
            return Optional.of(base.with(sketch.keys()).check().atOneMoment()).filter(Casting::hasRoom);
        } catch (ScenarioException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** Whether the dish can be built and keeps to the limits on sheet and pan height. */
    boolean allowed(DishSketch sketch, DesignLimits limits) {
        Optional<Scenario> scenario = scenario(sketch);
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
    double watts(DishSketch sketch, DesignLimits limits) {
        return wattsOf(List.of(sketch), limits).get(0);
    }

    /** Watts of several dishes, in their order. */
    List<Double> wattsOf(List<DishSketch> sketches, DesignLimits limits) {
        Map<DishSketch, Scenario> missing = new LinkedHashMap<>();
        for (DishSketch sketch : sketches) {
            if (!watts.containsKey(sketch) && allowed(sketch, limits)) {
                missing.put(sketch, scenario(sketch).orElseThrow());
            }
        }
        List<PairedWatts> traced = PairedStudy.watts(List.copyOf(missing.values()), options, asked);
        int k = 0;
        for (DishSketch sketch : missing.keySet()) {
            watts.put(sketch, traced.get(k++).absorbed().value());
        }
        List<Double> out = new ArrayList<>();
        for (DishSketch sketch : sketches) {
            out.add(allowed(sketch, limits) ? watts.get(sketch) : 0.0);
        }
        return out;
    }
}
