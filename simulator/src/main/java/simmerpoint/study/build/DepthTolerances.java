package simmerpoint.study.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.MeasuredRibs;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * How far ribs may be off at some distance from the axis until that costs {@link #LOSS} of the watts: all ribs are off there, by turns
 * two up and two down, and on their plan at the other distances. Small errors cost watts by the square of their size, which is used to
 * get from an error that was traced to the one that is asked for; what comes out is traced, and corrected once more.
 */
final class DepthTolerances {
    /** Share of the watts that a tolerance costs. */
    static final double LOSS = 0.02;

    private static final double FIRST = 0.004;
    private static final double LEAST = 0.0005;
    private static final double MOST = 0.015;
    private static final int ROUNDS = 2;

    /** A cost below so many of its standard errors is not seen. */
    private static final double SEEN = 2;

    private final Scenario scenario;
    private final double[] radii;
    private final TraceOptions options;

    private DepthTolerances(Scenario scenario, double[] radii, TraceOptions options) {
        this.scenario = scenario;
        this.radii = radii;
        this.options = options;
    }

    /**
     * Tolerances at these distances from the axis, m, each less than the rim's; none for a dish without ribs.
     *
     * @param scenario on ribs as planned
     */
    static List<DepthTolerance> of(Scenario scenario, double[] radii, TraceOptions options, Progress progress) {
        boolean ribbed = scenario.dish().cut().has(CutTrait.RIBS) && radii.length > 0;
        return ribbed ? new DepthTolerances(scenario, radii, options).find(progress) : List.of();
    }

    private List<DepthTolerance> find(Progress progress) {
        double[] off = new double[radii.length];
        Arrays.fill(off, FIRST);
        for (int round = 0; round < ROUNDS; round++) {
            List<Scenario> all = new ArrayList<>();
            all.add(scenario);
            for (int k = 0; k < radii.length; k++) {
                all.add(scenario.withDish(off(k, off[k])));
            }
            List<PairedWatts> watts = PairedStudy.watts(all, options, progress);
            for (int k = 0; k < radii.length; k++) {
                Estimate gain = watts.get(k + 1).usefulBeyond(watts.get(0));
                double wanted = LOSS * watts.get(0).useful().value();
                off[k] = within(
                        -gain.value() > SEEN * gain.standardError()
                                ? off[k] * Math.sqrt(wanted / -gain.value())
                                : MOST);
            }
        }
        return IntStream.range(0, radii.length)
                .mapToObj(k -> new DepthTolerance(radii[k], off[k], off[k] >= MOST))
                .toList();
    }

    private static double within(double metres) {
        return Math.max(LEAST, Math.min(MOST, metres));
    }

    /** The dish with all ribs off at one distance. */
    private DishPlan off(int place, double metres) {
        DishPlan dish = scenario.dish();
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
