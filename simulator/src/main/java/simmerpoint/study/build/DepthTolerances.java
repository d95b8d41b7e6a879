package simmerpoint.study.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.MeasuredRibs;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * How far ribs may be off at some distance from the axis until that costs {@link #LOSS} of the watts: all ribs are off there, by turns
 * two up and two down, and on their plan at the other distances.
 */
final class DepthTolerances {
    /** Share of the watts that a tolerance costs. */
    static final double LOSS = 0.02;

    private static final ErrorSizeSearch SEARCH = new ErrorSizeSearch(LOSS, 0.004, 0.0005, 0.015, 2);

    private final DishPlan dish;
    private final double[] radii;

    private DepthTolerances(DishPlan dish, double[] radii) {
        this.dish = dish;
        this.radii = radii;
    }

    /**
     * Tolerances at these distances from the axis, m, each less than the rim's; none for a dish without ribs.
     *
     * @param scenario on ribs as planned
     */
    static List<DepthTolerance> of(Scenario scenario, double[] radii, TraceOptions options, Progress progress) {
        if (!scenario.dish().cut().has(CutTrait.RIBS) || radii.length == 0) {
            return List.of();
        }
        DepthTolerances ribs = new DepthTolerances(scenario.dish(), radii);
        List<DoubleFunction<Scenario>> errors = IntStream.range(0, radii.length)
                .<DoubleFunction<Scenario>>mapToObj(place -> metres -> scenario.withDish(ribs.off(place, metres)))
                .toList();
        List<Double> found = SEARCH.find(scenario, errors, options, progress);
        return IntStream.range(0, found.size())
                .mapToObj(k -> new DepthTolerance(radii[k], found.get(k), found.get(k) >= SEARCH.most()))
                .toList();
    }

    /** The dish with all ribs off at one distance. */
    private DishPlan off(int place, double metres) {
        List<Double> at = new ArrayList<>();
        Arrays.stream(radii).forEach(at::add);
        at.add(dish.radiusMetres());
        int ribs = dish.cut().ribs(dish).orElseThrow().sectors();
        List<List<Double>> heights = IntStream.range(0, ribs)
                .mapToObj(rib -> IntStream.range(0, at.size())
                        .mapToObj(k -> k == place ? (rib % 4 < 2 ? metres : -metres) : 0.0)
                        .toList())
                .toList();
        return dish.withCut(new MeasuredRibs(dish.cut(), at, heights));
    }
}
