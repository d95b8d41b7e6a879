package simmerpoint.study.aim;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * How far a dish may be off before the pan loses a share of its watts. Measured from a <b>dead-on</b> aim (neither turn nor
 * drift, whatever the scenario's own aim is; jitter, mount and carrier as they are), and as a share of the watts then
 * ({@link PairedWatts#useful()}: cooking power; of a bare disc what it catches). Where the pan stands out
 * of place another aim may give more: such a rise is passed over, the tolerance is the first angle at which the share is gone.
 *
 * <p>Angles go up to {@link #RANGE}, drift down only to the horizon, and a turn ends before the pan touches the mirror.
 *
 * @param lossShare share of the watts that is lost at the tolerance, above 0, below 1
 * @param deadOn the cooker aimed dead on
 * @param angles rad with standard error, by way; a way along which so much is never lost within the range is missing
 */
public record AimTolerance(double lossShare, PairedWatts deadOn, Map<MisaimDirection, Estimate> angles) {
    /** Angles are searched up to here, rad: 15°, an hour of the sun's walk. */
    public static final double RANGE = Math.toRadians(15);

    /** Where nothing else is asked. */
    public static final double USUAL_LOSS = 0.1;

    private static final long FIRST_RAYS = 1L << 14;
    private static final long MORE = 4;
    private static final double WANTED_ERROR = 0.02;

    /** Keeps its own copy. */
    public AimTolerance {
        angles = Collections.unmodifiableMap(copy(angles));
    }

    private static Map<MisaimDirection, Estimate> copy(Map<MisaimDirection, Estimate> angles) {
        Map<MisaimDirection, Estimate> out = new EnumMap<>(MisaimDirection.class);
        out.putAll(angles);
        return out;
    }

    /**
     * The tolerances of many cookers, all traced together. Starts with 16,384 rays (or {@code options.rays()} if fewer)
     * and takes up to {@code options.rays()} for those whose angles are not yet good to 2 %.
     *
     * @param lossShare above 0, below 1
     * @return one for each scenario, in their order; nothing caught when aimed dead on: no angles
     * @throws ImpossibleSetupException if one aimed dead on cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static List<AimTolerance> of(
            List<Scenario> scenarios, double lossShare, TraceOptions options, Progress progress) {
        return of(scenarios, List.of(MisaimDirection.values()), lossShare, options, progress);
    }

    /** The same along some ways only; the others are missing. */
    static List<AimTolerance> of(
            List<Scenario> scenarios,
            List<MisaimDirection> ways,
            double lossShare,
            TraceOptions options,
            Progress progress) {
        if (!(lossShare > 0 && lossShare < 1)) {
            throw new IllegalArgumentException("a loss of " + lossShare + " is outside 0 to 1");
        }
        TraceOptions first = options.withPrecision(0).withRays(Math.min(options.rays(), FIRST_RAYS));
        List<AimTolerance> out =
                new ArrayList<>(search(scenarios, ways, lossShare, first, new PartialProgress(progress, 0, 0.5)));
        for (long rays = first.rays() * MORE; rays <= options.rays(); rays *= MORE) {
            List<Integer> rough = new ArrayList<>();
            for (int k = 0; k < out.size(); k++) {
                if (out.get(k).isRough()) {
                    rough.add(k);
                }
            }
            List<AimTolerance> again = search(
                    rough.stream().map(scenarios::get).toList(),
                    ways,
                    lossShare,
                    first.withRays(rays),
                    new PartialProgress(progress, 0.5, 1));
            for (int k = 0; k < rough.size(); k++) {
                out.set(rough.get(k), again.get(k));
            }
        }
        return List.copyOf(out);
    }

    private static List<AimTolerance> search(
            List<Scenario> scenarios,
            List<MisaimDirection> ways,
            double lossShare,
            TraceOptions options,
            Progress progress) {
        List<Scenario> deadOn =
                scenarios.stream().map(s -> s.withAim(s.aim().deadOn())).toList();
        List<PairedWatts> watts = PairedStudy.watts(deadOn, options, new PartialProgress(progress, 0, 0.1));
        List<ToleranceSearch> searches = new ArrayList<>();
        for (PairedWatts w : watts) {
            AimFeasibility room = new AimFeasibility(w.scenario());
            for (MisaimDirection way : ways) {
                DoubleFunction<Aim> aims = way.path().from(w.scenario().aim());
                searches.add(new ToleranceSearch(w, aims, lossShare, ToleranceSearch.reach(room, aims, RANGE)));
            }
        }
        ToleranceSearch.run(searches, options, new PartialProgress(progress, 0.1, 1));
        Iterator<ToleranceSearch> done = searches.iterator();
        List<AimTolerance> out = new ArrayList<>();
        for (PairedWatts w : watts) {
            Map<MisaimDirection, Estimate> angles = new EnumMap<>(MisaimDirection.class);
            for (MisaimDirection way : ways) {
                done.next().found().ifPresent(angle -> angles.put(way, angle));
            }
            out.add(new AimTolerance(lossShare, w, angles));
        }
        return out;
    }

    private boolean isRough() {
        return angles.values().stream().anyMatch(a -> a.standardError() > WANTED_ERROR * a.value());
    }

    /** Along one way, rad; empty if so much is never lost within the range. */
    public Optional<Estimate> angle(MisaimDirection way) {
        return Optional.ofNullable(angles.get(way));
    }

    /** Least of the four drifts, rad; empty if none loses so much within the range. */
    public Optional<Estimate> drift() {
        return least(false);
    }

    /** Least of the four turns, rad; empty if none loses so much within the range. */
    public Optional<Estimate> turn() {
        return least(true);
    }

    private Optional<Estimate> least(boolean turn) {
        return angles.entrySet().stream()
                .filter(e -> e.getKey().isTurn() == turn)
                .map(Map.Entry::getValue)
                .min(Comparator.comparingDouble(Estimate::value));
    }
}
