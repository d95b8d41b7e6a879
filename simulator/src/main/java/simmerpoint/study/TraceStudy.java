package simmerpoint.study;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.MirrorSurfaces;
import simmerpoint.dish.PanelTilts;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.ScrambledSobol;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Clearance;
import simmerpoint.setup.Setup;
import simmerpoint.target.CatchPlan;
import simmerpoint.target.Figures;
import simmerpoint.target.TargetCatch;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.LightCaster;

/**
 * Traces one scenario: the main job. The sample is {@value #REPLICATES} independently scrambled replicates; each is worked
 * through in a fixed order by one thread, so the result does not depend on how many threads share the replicates. A
 * wanted precision is looked at after fixed numbers of rays only: 65,536 and every doubling.
 */
public final class TraceStudy {
    /** Independent replicates behind every standard error. */
    public static final int REPLICATES = 16;

    private static final int LEAST_BITS = 6;
    private static final int FIRST_LOOK_BITS = 12;

    private final Scenario scenario;
    private final TraceOptions options;
    private final MirrorSurface surface;
    private final LightCaster caster;
    private final CatchPlan plan;
    private final List<ScrambledSobol> samples = new ArrayList<>();
    private final List<CatchPlan.Replicate> replicates = new ArrayList<>();

    private TraceStudy(Scenario scenario, TraceOptions options) {
        this.scenario = scenario;
        this.options = options;
        Setup setup = Setup.of(
                scenario.dish().focalLengthMetres(),
                scenario.sun(),
                scenario.aim(),
                scenario.target(),
                scenario.stand());
        surface = MirrorSurfaces.of(scenario.dish(), setup.sunInDish());
        double room = Clearance.aboveMirror(surface, setup, scenario.target());
        if (!(room > 0)) {
            throw new ImpossibleSetupException(String.format(
                    java.util.Locale.ROOT,
                    "the pan would cut %.0f mm into the mirror: raise it or push it less far towards the dish",
                    -room * 1000));
        }
        PanelTilts tilts =
                PanelTilts.draw(surface.panels(), scenario.mirror().panelTiltRadians(), options.seed());
        caster = new LightCaster(
                surface,
                scenario.mirror(),
                tilts,
                scenario.sun(),
                setup,
                scenario.aim().jitterRadians());
        plan = new CatchPlan(
                scenario.target(), setup, scenario.sun(), scenario.mirror(), options.peakDiscRadius());
        for (int r = 0; r < REPLICATES; r++) {
            samples.add(new ScrambledSobol(caster.dimensions(), options.seed(), r));
            replicates.add(plan.new Replicate());
        }
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
        int threads = Math.min(options.threads(), REPLICATES);
        long start = System.nanoTime();
        boolean reached = true;
        try (ReplicateWorkers workers = new ReplicateWorkers(threads, REPLICATES, progress)) {
            if (options.precision() > 0) {
                reached = untilPrecise(workers);
            } else {
                traceBlock(workers, bitsFor(options.rays()), 0, 0, 1);
            }
        }
        double seconds = (System.nanoTime() - start) * 1e-9;
        return result(reached, threads, seconds);
    }

    /** Bits of a replicate's size, so that all replicates together have at least {@code rays}. */
    private static int bitsFor(long rays) {
        long each = (rays + REPLICATES - 1) / REPLICATES;
        return Math.max(LEAST_BITS, 64 - Long.numberOfLeadingZeros(each - 1));
    }

    private boolean untilPrecise(ReplicateWorkers workers) {
        int most = Math.max(FIRST_LOOK_BITS, bitsFor(options.rays()));
        for (int block = 0; ; block++) {
            int bits = FIRST_LOOK_BITS + block;
            double from = block == 0 ? 0 : Math.pow(2, bits - 1.0 - most);
            traceBlock(workers, FIRST_LOOK_BITS, block, from, Math.pow(2, (double) bits - most));
            Estimate caught = plan.figures(replicates).caught();
            if (caught.relativeError() <= options.precision()) {
                return true;
            }
            if (bits >= most) {
                return false;
            }
            workers.say(String.format(
                    java.util.Locale.ROOT,
                    "%,d rays, ±%.3g %%",
                    (long) REPLICATES << bits,
                    100 * caught.relativeError()));
        }
    }

    /** Traces one block of every replicate; the work goes from share {@code from} to {@code to} of all work. */
    private void traceBlock(ReplicateWorkers workers, int firstBits, int number, double from, double to) {
        workers.run(from, to, (r, watch) -> {
            ScrambledSobol sample = samples.get(r);
            LightCaster.Beam beam = caster.new Beam(sample, sample.block(firstBits, number));
            TargetCatch catcher = replicates.get(r).catcher(caster, beam.batchSize());
            long batches = beam.batches();
            for (long k = 0; k < batches; k++) {
                LightBatch light = beam.cast(k);
                catcher.catchLight(light);
                watch.step(k + 1, batches);
            }
        });
    }

    private TraceResult result(boolean reached, int threads, double seconds) {
        Figures figures = plan.figures(replicates);
        return new TraceResult(
                scenario,
                surface.outlineArea(),
                surface.apertureArea(),
                surface.panels(),
                figures.ledger(),
                figures.spot(),
                figures.maps(),
                options.seed(),
                REPLICATES,
                reached,
                new TraceResult.RunInfo(figures.rays(), threads, seconds));
    }
}
