package simmerpoint.study.compare;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.study.aim.AimAgain;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.light.LightKey;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.paired.GluingLuck;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.pan.BestStand;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;

/**
 * Holds cookers against each other: the same seed and equally many rays for all, light cast once for those that share
 * mirrors and sun. A wanted precision is met by tracing all of them anew with twice the rays until the caught watts of each
 * are that sure.
 */
public final class CompareStudy {
    /** Whole traces kept at once: bounds the memory for maps. */
    private static final int CHUNK = 64;

    /** Rays of the quick way where none are asked for: watts are then good to a thousandth, and differences to less. */
    public static final long QUICK_RAYS = 1L << 15;

    private static final long FIRST_RAYS = 1L << 16;
    /** 2^{@value} drawn cookers of each: the ends of a range are good to some 0.15 of its width. */
    private static final int COOKERS = 6;

    /** Rays for the hottest light of the quick way: good to a tenth, which moves no caution. */
    private static final long HOT_SPOT_RAYS = 1L << 12;

    private static final double WATTS = 0.8;
    private static final double TRACES = 0.4;
    private static final double TIMED = 0.65;
    private static final double PLACED = 0.9;

    private final List<Variant> variants;
    private final List<Integer> order;
    private final TraceOptions options;
    private final Progress progress;

    private CompareStudy(List<Variant> variants, TraceOptions options, Progress progress) {
        this.variants = variants;
        this.options = options;
        this.progress = progress;
        order = sharersTogether(variants);
    }

    /**
     * Compares {@code variants}, of which there is at least one.
     *
     * @throws ImpossibleSetupException if one of them cannot stand as asked: {@link #firstImpossible} names it
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static Comparison run(List<Variant> variants, TraceOptions options, Progress progress) {
        return new CompareStudy(variants, options, progress).run();
    }

    /**
     * The quick way: watts with all rays and boiling times by the likely losses, for the figures exactly as given. The hottest light, for
     * cautions, comes from few rays; ranges, best places, aiming and the luck of gluing are left out.
     *
     * @throws ImpossibleSetupException if one of them cannot stand as asked: {@link #firstImpossible} names it
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static Comparison quick(List<Variant> variants, TraceOptions options, Progress progress) {
        return new CompareStudy(variants, options, progress).quick();
    }

    /**
     * Looks whether all of them can stand as asked, and aimed dead on, before any light is cast.
     *
     * @return the first that cannot; empty if all can
     */
    public static Optional<Impossible> firstImpossible(List<Variant> variants) {
        for (Variant variant : variants) {
            Scenario scenario = variant.scenario();
            try {
                ReplicateCaster.refuseInMirror(scenario);
                ReplicateCaster.refuseInMirror(scenario.withAim(scenario.aim().deadOn()));
            } catch (ImpossibleSetupException e) {
                return Optional.of(new Impossible(variant, e.getMessage()));
            }
        }
        return Optional.empty();
    }

    /**
     * A cooker that cannot stand as asked.
     *
     * @param variant which
     * @param reason a clause for the user
     */
    public record Impossible(Variant variant, String reason) {}

    /**
     * Compares what is traced already, without when each is to be aimed again.
     *
     * @param traced one for each variant, all with the same samples
     * @param luck of gluing these, if panels are glued askew
     */
    public static Comparison ofTraces(List<Variant> variants, List<PairedTrace> traced, Optional<GluingLuck> luck) {
        List<Traced> kept = traced.stream().map(Traced::of).toList();
        TraceResult first = traced.get(0).trace();
        List<Optional<AimAgain>> again = Collections.nCopies(variants.size(), Optional.empty());
        return new Comparison(
                rows(
                        variants,
                        kept.toArray(Traced[]::new),
                        again,
                        Collections.nCopies(variants.size(), Optional.empty()),
                        Collections.nCopies(variants.size(), Optional.empty()),
                        luck),
                first.seed(),
                first.replicates(),
                true,
                false,
                first.run());
    }

    /** One cooker's traced figures, without its maps. */
    private record Traced(PairedWatts watts, Estimate peakFlux, double hottestFlux, Optional<BoilingOutcome> boil) {
        /** The watts with a hot spot from other rays and a boiling time for the likely losses alone. */
        static Traced quick(PairedWatts watts, TraceResult few) {
            Optional<BoilingOutcome> boil = watts.heat().map(HeatResult::quickBoil);
            return new Traced(watts, few.spot().peakFlux(), MaximumFlux.of(few), boil);
        }

        static Traced of(PairedTrace pair) {
            TraceResult trace = pair.trace();
            return new Traced(
                    pair.watts(),
                    trace.spot().peakFlux(),
                    MaximumFlux.of(trace),
                    trace.heat().map(HeatResult::boil));
        }
    }

    private Comparison run() {
        long start = System.nanoTime();
        Traced[] traced;
        long rays = options.precision() > 0 ? Math.min(FIRST_RAYS, options.rays()) : options.rays();
        double from = 0;
        while (true) {
            double to = options.precision() > 0 ? (from + TRACES) / 2 : TRACES;
            traced = trace(options.withPrecision(0).withRays(rays), new PartialProgress(progress, from, to));
            if (precise(traced) || 2 * rays > options.rays()) {
                break;
            }
            rays *= 2;
            from = to;
        }
        List<Optional<AimAgain>> again = again(new PartialProgress(progress, TRACES, TIMED));
        TraceOptions last = options.withPrecision(0).withRays(rays);
        List<Optional<BestStand.Found>> atBest = atBest(last, new PartialProgress(progress, TIMED, PLACED));
        List<Scenario> all = variants.stream().map(Variant::scenario).toList();
        Optional<GluingLuck> luck = all.size() > 1
                ? GluingLuck.ifAny(all, last, new PartialProgress(progress, PLACED, 1))
                : Optional.empty();
        double seconds = (System.nanoTime() - start) * 1e-9;
        long cast = (long) ReplicateCaster.REPLICATES << ReplicateCaster.bitsFor(rays);
        TraceResult.RunInfo info =
                new TraceResult.RunInfo(cast, Math.min(options.threads(), ReplicateCaster.REPLICATES), seconds);
        return new Comparison(
                rows(variants, traced, again, atBest, likely(last), luck),
                options.seed(),
                ReplicateCaster.REPLICATES,
                precise(traced),
                false,
                info);
    }

    private Comparison quick() {
        long start = System.nanoTime();
        TraceOptions all = options.withPrecision(0);
        Traced[] traced = new Traced[variants.size()];
        this.<Traced>inChunks(
                (scenarios, p) -> wattsAndHotSpots(scenarios, all, p), progress, (k, found) -> traced[k] = found);
        List<Optional<AimAgain>> again = Collections.nCopies(traced.length, Optional.empty());
        TraceResult.RunInfo info = new TraceResult.RunInfo(
                (long) ReplicateCaster.REPLICATES << ReplicateCaster.bitsFor(options.rays()),
                Math.min(options.threads(), ReplicateCaster.REPLICATES),
                (System.nanoTime() - start) * 1e-9);
        return new Comparison(
                rows(
                        variants,
                        traced,
                        again,
                        Collections.nCopies(traced.length, Optional.empty()),
                        Collections.nCopies(traced.length, Optional.empty()),
                        Optional.empty()),
                options.seed(),
                ReplicateCaster.REPLICATES,
                precise(traced),
                true,
                info);
    }

    private static List<Traced> wattsAndHotSpots(List<Scenario> scenarios, TraceOptions all, Progress progress) {
        List<PairedWatts> watts = PairedStudy.watts(scenarios, all, new PartialProgress(progress, 0, WATTS));
        TraceOptions few = all.withRays(Math.min(HOT_SPOT_RAYS, all.rays()));
        List<PairedTrace> hot = PairedStudy.traces(scenarios, few, new PartialProgress(progress, WATTS, 1));
        return IntStream.range(0, scenarios.size())
                .mapToObj(k -> Traced.quick(watts.get(k), hot.get(k).trace()))
                .toList();
    }

    private boolean precise(Traced[] traced) {
        for (Traced t : traced) {
            Estimate caught = t.watts().caught();
            if (options.precision() > 0 && caught.value() > 0 && !(caught.relativeError() <= options.precision())) {
                return false;
            }
        }
        return true;
    }

    /** Indices with those that share their light next to each other, in order of the first of them. */
    private static List<Integer> sharersTogether(List<Variant> variants) {
        Map<LightKey, List<Integer>> groups = new LinkedHashMap<>();
        for (int k = 0; k < variants.size(); k++) {
            groups.computeIfAbsent(LightKey.of(variants.get(k).scenario()), key -> new ArrayList<>())
                    .add(k);
        }
        return groups.values().stream().flatMap(List::stream).toList();
    }

    /** Work on some of the scenarios at once. */
    private interface Work<T> {
        List<T> of(List<Scenario> scenarios, Progress progress);
    }

    /** Takes the work's result for the variant of that index. */
    private interface Taker<T> {
        void take(int index, T result);
    }

    private <T> void inChunks(Work<T> work, Progress whole, Taker<T> taker) {
        for (int first = 0; first < order.size(); first += CHUNK) {
            List<Integer> chunk = order.subList(first, Math.min(order.size(), first + CHUNK));
            double all = order.size();
            Progress part = new PartialProgress(whole, first / all, (first + chunk.size()) / all);
            List<T> results =
                    work.of(chunk.stream().map(k -> variants.get(k).scenario()).toList(), part);
            IntStream.range(0, chunk.size()).forEach(k -> taker.take(chunk.get(k), results.get(k)));
        }
    }

    private Traced[] trace(TraceOptions with, Progress part) {
        Traced[] out = new Traced[variants.size()];
        this.<PairedTrace>inChunks(
                (scenarios, p) -> PairedStudy.traces(scenarios, with, p), part, (k, pair) -> out[k] = Traced.of(pair));
        return out;
    }

    private List<Optional<AimAgain>> again(Progress part) {
        List<Optional<AimAgain>> out = new ArrayList<>(Collections.nCopies(variants.size(), Optional.empty()));
        long rays = Math.min(options.rays(), TraceOptions.DEFAULT_RAYS);
        TraceOptions with = options.withPrecision(0).withRays(rays);
        this.<AimAgain>inChunks(
                (scenarios, p) -> AimAgain.of(scenarios, AimTolerance.USUAL_LOSS, with, p),
                part,
                (k, found) -> out.set(k, Optional.of(found)));
        return out;
    }

    private List<Optional<BestStand.Found>> atBest(TraceOptions with, Progress part) {
        List<Optional<BestStand.Found>> out = new ArrayList<>(Collections.nCopies(variants.size(), Optional.empty()));
        this.<BestStand.Found>inChunks(
                (scenarios, p) -> BestStand.of(scenarios, with, p), part, (k, found) -> out.set(k, Optional.of(found)));
        return out;
    }

    private List<Optional<LikelyResult>> likely(TraceOptions with) {
        return variants.stream()
                .map(variant -> Optional.of(LikelyStudy.run(variant.read(), COOKERS, with, Progress.NONE)))
                .toList();
    }

    private static List<ComparedRow> rows(
            List<Variant> variants,
            Traced[] traced,
            List<Optional<AimAgain>> again,
            List<Optional<BestStand.Found>> atBest,
            List<Optional<LikelyResult>> likely,
            Optional<GluingLuck> luck) {
        List<Integer> ranked = IntStream.range(0, traced.length)
                .boxed()
                .sorted(Comparator.comparingDouble(
                        k -> -traced[k].watts().useful().value()))
                .toList();
        int first = ranked.get(0);
        PairedWatts best = traced[first].watts();
        return ranked.stream()
                .map(k -> new ComparedRow(
                        variants.get(k),
                        k,
                        traced[k].watts().useful(),
                        traced[k].watts().ledger(),
                        difference(traced[k].watts().usefulBeyond(best), k, first, luck),
                        atBest.get(k),
                        traced[k].peakFlux(),
                        traced[k].hottestFlux(),
                        likely.get(k).flatMap(LikelyResult::boil).or(() -> traced[k].boil()),
                        traced[k].watts().panels(),
                        likely.get(k),
                        again.get(k)))
                .toList();
    }

    /** With the luck of gluing, which two dishes of one layout share. */
    private static Estimate difference(Estimate sampled, int k, int first, Optional<GluingLuck> luck) {
        return luck.map(built -> built.widened(
                        sampled,
                        dishes -> dishes.get(k).useful().value()
                                - dishes.get(first).useful().value()))
                .orElse(sampled);
    }
}
