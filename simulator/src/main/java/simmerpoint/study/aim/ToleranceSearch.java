package simmerpoint.study.aim;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.MonotoneCubic;
import simmerpoint.sampling.Replicates;
import simmerpoint.sampling.RootFinder;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * The first angle along one way at which a share of the watts is gone: a ladder of angles, a few at a time, until one has lost
 * it; then single angles where a monotone cubic through all traced points loses it, each nearer than the last. Every
 * point is held against the dead-on aim in pairs, so the standard error of the angle is that of the paired watts over their
 * slope. A dip between two rungs that recovers is not seen; the rungs stand an eighth to a quarter of the usual answer
 * apart.
 */
final class ToleranceSearch {
    private static final int[] LADDER = {1, 2, 3, 4, 6, 8, 10, 12, 16, 20, 24, 32, 48, 64, 96, 128};
    private static final int RUNGS_AT_ONCE = 4;
    private static final int MOST_REFINEMENTS = 4;
    private static final double CLOSE_ENOUGH = 2e-3;
    private static final double SLOPE_SPAN = 0.05;
    private static final int ROOM_PROBES = 30;
    private static final double SOLVER_SHARE = 1e-9;
    private static final int SOLVER_STEPS = 200;

    private final PairedWatts deadOn;
    private final DoubleFunction<Scenario> off;
    private final Optional<DoubleFunction<Scenario>> reference;
    private final double keptShare;
    private final double[] rungs;
    private final TreeMap<Double, Estimate> spare = new TreeMap<>();
    private double beyond = Double.NaN;
    private int nextRung;
    private int refinements;
    private boolean open;

    /**
     * Nothing traced yet but the dead-on aim.
     *
     * @param deadOn its watts
     * @param aims along which the aim goes wrong, by angle (rad)
     * @param lossShare share of the watts that goes
     * @param reach largest angle, rad
     */
    ToleranceSearch(PairedWatts deadOn, DoubleFunction<Aim> aims, double lossShare, double reach) {
        this(deadOn, angle -> deadOn.scenario().withAim(aims.apply(angle)), Optional.empty(), lossShare, reach);
    }

    /**
     * The same against another cooker at every angle.
     *
     * @param deadOn the cooker at angle 0
     * @param off what it is at an angle (rad)
     * @param reference what it is held against there; empty if that is {@code deadOn} everywhere
     * @param lossShare share of the watts that goes
     * @param reach largest angle, rad
     */
    ToleranceSearch(
            PairedWatts deadOn,
            DoubleFunction<Scenario> off,
            Optional<DoubleFunction<Scenario>> reference,
            double lossShare,
            double reach) {
        this.deadOn = deadOn;
        this.off = off;
        this.reference = reference;
        keptShare = 1 - lossShare;
        rungs = rungs(deadOn.scenario(), reach);
        open = deadOn.useful().value() > 0 && rungs.length > 0;
        spare.put(0.0, spare(deadOn, deadOn));
    }

    /** Largest angle worth asking for: up to {@code most} (rad), and so far as the aim can be. */
    static double reach(AimFeasibility room, DoubleFunction<Aim> aims, double most) {
        return reach(angle -> room.allows(aims.apply(angle)), most);
    }

    /** Largest angle up to {@code most} (rad) so far as it is allowed. */
    static double reach(DoublePredicate allowed, double most) {
        int k = 0;
        while (k < ROOM_PROBES && allowed.test(most * (k + 1) / ROOM_PROBES)) {
            k++;
        }
        return most * k / ROOM_PROBES;
    }

    /**
     * Rungs up to {@code reach}, and that itself. Drift and turn of a dish get the same ones, so that a turn shares the light of
     * the opposite drift: an eighth of the angle at which the spot's middle walks a radius of the target, whichever
     * walks faster.
     */
    private static double[] rungs(Scenario scenario, double reach) {
        double f = scenario.dish().focalLengthMetres();
        Aim aim = scenario.aim();
        double arm = aim.panCarriedBy() == Aim.PanCarrier.DISH ? f : Math.max(f, f + scenario.armMetres());
        double step = Math.atan(scenario.target().radiusMetres() / arm) / 8;
        DoubleStream inside = IntStream.of(LADDER).mapToDouble(k -> k * step).filter(a -> a < reach);
        return reach > 0 ? DoubleStream.concat(inside, DoubleStream.of(reach)).toArray() : new double[0];
    }

    /** Works on all searches together, round by round. */
    static void run(List<ToleranceSearch> searches, TraceOptions options, Progress progress) {
        runSoonest(searches.stream().map(List::of).toList(), options, progress);
    }

    /**
     * The same for groups of which only the least angle counts: the search of another way ends as soon as it cannot be the least any more.
     */
    static void runSoonest(List<List<ToleranceSearch>> groups, TraceOptions options, Progress progress) {
        List<ToleranceSearch> searches = groups.stream().flatMap(List::stream).toList();
        int most = LADDER.length / RUNGS_AT_ONCE + 1 + MOST_REFINEMENTS;
        for (int round = 0; round < most; round++) {
            List<Scenario> wanted = new ArrayList<>();
            List<Runnable> takers = new ArrayList<>();
            List<PairedWatts> traced = new ArrayList<>();
            for (ToleranceSearch search : searches) {
                for (double angle : search.wanted()) {
                    int index = wanted.size();
                    wanted.add(search.off.apply(angle));
                    search.reference.ifPresent(other -> wanted.add(other.apply(angle)));
                    takers.add(() -> search.take(angle, traced, index));
                }
            }
            PartialProgress part = new PartialProgress(progress, (double) round / most, (round + 1.0) / most);
            traced.addAll(PairedStudy.watts(wanted, options, part));
            takers.forEach(Runnable::run);
            searches.forEach(ToleranceSearch::step);
            groups.forEach(ToleranceSearch::closeLater);
        }
    }

    private static void closeLater(List<ToleranceSearch> group) {
        double least = group.stream()
                .filter(search -> !Double.isNaN(search.beyond))
                .mapToDouble(search -> search.beyond)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        group.forEach(search -> search.open &= search.kept() < least);
    }

    /** Largest traced angle up to which the share is not lost. */
    private double kept() {
        return Double.isNaN(beyond) ? spare.lastKey() : spare.lowerKey(beyond);
    }

    private void take(double angle, List<PairedWatts> traced, int index) {
        PairedWatts held = reference.isPresent() ? traced.get(index + 1) : deadOn;
        spare.put(angle, spare(traced.get(index), held));
    }

    /** Watts above what is to be kept of those of {@code held}. */
    private Estimate spare(PairedWatts watts, PairedWatts held) {
        double[] mine = watts.usefulByReplicate();
        double[] others = held.usefulByReplicate();
        return Replicates.mean(mine.length, r -> mine[r] - keptShare * others[r]);
    }

    /** Angles to trace next; empty when done. */
    private double[] wanted() {
        if (!open) {
            return new double[0];
        }
        if (Double.isNaN(beyond)) {
            int last = Math.min(rungs.length, nextRung + RUNGS_AT_ONCE);
            return IntStream.range(nextRung, last).mapToDouble(k -> rungs[k]).toArray();
        }
        return new double[] {root()};
    }

    /** Looks at what was traced. */
    private void step() {
        if (!open) {
            return;
        }
        boolean refined = !Double.isNaN(beyond);
        nextRung += RUNGS_AT_ONCE;
        beyond = firstBeyond();
        if (Double.isNaN(beyond)) {
            open = nextRung < rungs.length;
            return;
        }
        refinements += refined ? 1 : 0;
        open = refinements < MOST_REFINEMENTS && !isClose();
    }

    private double firstBeyond() {
        for (Map.Entry<Double, Estimate> e : spare.entrySet()) {
            if (e.getValue().value() < 0) {
                return e.getKey();
            }
        }
        return Double.NaN;
    }

    /** Whether some point lies so near that a straight line leads to the answer. */
    private boolean isClose() {
        double nearest = spare.values().stream()
                .mapToDouble(e -> Math.abs(e.value()))
                .min()
                .orElseThrow();
        return nearest <= CLOSE_ENOUGH * (1 - keptShare) * deadOn.useful().value();
    }

    /** Where the curve through all points first loses the share. */
    private double root() {
        double inside = spare.lowerKey(beyond);
        MonotoneCubic curve = curve();
        if (spare.get(inside).value() == 0) {
            return inside;
        }
        return RootFinder.to(SOLVER_SHARE * beyond, SOLVER_STEPS).find(curve::at, inside, beyond);
    }

    private MonotoneCubic curve() {
        return new MonotoneCubic(
                spare.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                spare.values().stream().mapToDouble(Estimate::value).toArray());
    }

    /** The answer, rad, with its standard error; empty if the share is never lost. */
    Optional<Estimate> found() {
        if (Double.isNaN(beyond)) {
            return Optional.empty();
        }
        double angle = root();
        MonotoneCubic curve = curve();
        double from = angle * (1 - SLOPE_SPAN);
        double to = Math.min(angle * (1 + SLOPE_SPAN), spare.lastKey());
        double slope = (curve.at(to) - curve.at(from)) / (to - from);
        Double nearest = spare.floorKey(angle);
        Double above = spare.ceilingKey(angle);
        if (above != null && above - angle < angle - nearest) {
            nearest = above;
        }
        return Optional.of(new Estimate(angle, spare.get(nearest).standardError() / Math.abs(slope)));
    }
}
