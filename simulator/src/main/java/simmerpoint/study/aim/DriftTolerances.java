package simmerpoint.study.aim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * How far the sun may drift, for a table that shows two digits: few rays first, more only for those whose least drift is not
 * good to 4 % yet. A tenth of the work of {@link AimTolerance} at its own usual precision.
 */
public final class DriftTolerances {
    private static final long FIRST_RAYS = 1L << 12;
    private static final long MORE = 4;
    private static final double WANTED_ERROR = 0.04;

    private static final List<MisaimDirection> DRIFTS =
            Arrays.stream(MisaimDirection.values()).filter(way -> !way.isTurn()).toList();

    private DriftTolerances() {}

    /** The least of the four drifts for each scenario, rad; empty as {@link AimTolerance#drift()}. */
    public static List<Optional<Estimate>> of(List<Scenario> scenarios, TraceOptions options, Progress progress) {
        List<Optional<Estimate>> out = new ArrayList<>();
        scenarios.forEach(scenario -> out.add(Optional.empty()));
        int[] open = allOf(scenarios.size());
        double from = 0;
        for (long rays = Math.min(options.rays(), FIRST_RAYS);
                open.length > 0 && rays <= options.rays();
                rays *= MORE) {
            List<Scenario> asked = Arrays.stream(open).mapToObj(scenarios::get).toList();
            PartialProgress part = new PartialProgress(progress, from, (1 + from) / 2);
            List<AimTolerance> found =
                    AimTolerance.of(asked, DRIFTS, AimTolerance.USUAL_LOSS, options.withRays(rays), part);
            for (int k = 0; k < open.length; k++) {
                out.set(open[k], found.get(k).drift());
            }
            open = Arrays.stream(open).filter(k -> isRough(out.get(k))).toArray();
            from = (1 + from) / 2;
        }
        return List.copyOf(out);
    }

    private static int[] allOf(int n) {
        return IntStream.range(0, n).toArray();
    }

    private static boolean isRough(Optional<Estimate> drift) {
        return drift.filter(d -> d.standardError() > WANTED_ERROR * d.value()).isPresent();
    }
}
