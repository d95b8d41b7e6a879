package simmerpoint.study.trace;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.target.CaughtByFace;
import simmerpoint.target.FluxMaps;
import simmerpoint.target.Ledger;
import simmerpoint.target.TallyStatistics;
import simmerpoint.target.TargetScene;

/**
 * Traces one scenario: the main job. A wanted precision is looked at after fixed numbers of rays only, 65,536 and every
 * doubling, so that where it stops does not depend on the machine.
 */
public final class TraceStudy {
    private static final int FIRST_LOOK_BITS = 12;

    private final Scenario scenario;
    private final TraceOptions options;
    private final ReplicateCaster casting;
    private final ReplicateCatchers catchers;
    private final int firstBits;

    private TraceStudy(Scenario scenario, TraceOptions options) {
        this.scenario = scenario;
        this.options = options;
        casting = new ReplicateCaster(scenario, options);
        TargetScene plan = new TargetScene(
                scenario.target(), casting.setup(), scenario.sun(), scenario.built(), options.peakDiscRadius());
        firstBits = options.precision() > 0 ? FIRST_LOOK_BITS : ReplicateCaster.bitsFor(options.rays());
        catchers = new ReplicateCatchers(plan, casting.caster(), ReplicateCaster.batchSize(firstBits));
    }

    /**
     * Traces {@code scenario} as {@code options} say, telling {@code progress}.
     *
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static TraceResult run(Scenario scenario, TraceOptions options, Progress progress) {
        return new TraceStudy(scenario, options).run(progress);
    }

    private TraceResult run(Progress progress) {
        long start = System.nanoTime();
        boolean reached = true;
        try (ReplicateWorkers workers = casting.workers(progress)) {
            if (options.precision() > 0) {
                reached = untilPrecise(workers);
            } else {
                traceBlock(workers, 0, 0, 1);
            }
        }
        return result(reached, (System.nanoTime() - start) * 1e-9);
    }

    private void traceBlock(ReplicateWorkers workers, int number, double from, double to) {
        casting.castBlock(workers, firstBits, number, from, to, catchers::catchLight);
    }

    private boolean untilPrecise(ReplicateWorkers workers) {
        int most = Math.max(FIRST_LOOK_BITS, ReplicateCaster.bitsFor(options.rays()));
        for (int block = 0; ; block++) {
            int bits = FIRST_LOOK_BITS + block;
            double from = block == 0 ? 0 : Math.pow(2, bits - 1.0 - most);
            traceBlock(workers, block, from, Math.pow(2, (double) bits - most));
            Estimate caught = catchers.statistics().caught();
            if (caught.relativeError() <= options.precision()) {
                return true;
            }
            if (bits >= most) {
                return false;
            }
            workers.say(String.format(
                    Locale.ROOT,
                    "%,d rays, ±%.2g %%",
                    (long) ReplicateCaster.REPLICATES << bits,
                    100 * caught.relativeError()));
        }
    }

    private TraceResult result(boolean reached, double seconds) {
        return result(casting, scenario, options, catchers.statistics(), reached, seconds);
    }

    /** Everything that the figures of a catch say. */
    public static TraceResult result(
            ReplicateCaster casting,
            Scenario scenario,
            TraceOptions options,
            TallyStatistics figures,
            boolean precisionReached,
            double seconds) {
        CompletableFuture<FluxMaps> maps = casting.threads() > 1
                ? CompletableFuture.supplyAsync(figures::maps, ReplicateWorkers.HELPERS)
                : CompletableFuture.completedFuture(figures.maps());
        CaughtByFace faces = figures.caughtByFace();
        Optional<HeatResult> heat = HeatResult.of(scenario, faces, new UsefulPower(scenario).estimate(figures));
        Ledger ledger = ledger(figures, heat);
        EnergyLaws.check(ledger, casting.surface(), scenario);
        return new TraceResult(
                scenario,
                casting.surface().outlineArea(),
                casting.surface().apertureArea(),
                casting.surface().panels(),
                ledger,
                figures.spot(),
                maps.join(),
                faces,
                heat,
                options.seed(),
                ReplicateCaster.REPLICATES,
                precisionReached,
                new TraceResult.RunInfo(figures.rays(), casting.threads(), seconds));
    }

    /** The ledger with what the pan takes up of caught and direct light; a bare disc takes all. */
    public static Ledger ledger(TallyStatistics figures, Optional<HeatResult> heat) {
        double light = figures.caught().value() + figures.directWatts();
        double absorbed = heat.map(h -> h.absorbed().total()).orElse(light);
        return figures.ledger(light > 0 ? absorbed / light : 1);
    }
}
