package simmerpoint.study.trace;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.built.BuiltDish;
import simmerpoint.pan.Target;
import simmerpoint.sampling.ScrambledSobol;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Clearance;
import simmerpoint.setup.Setup;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.LightCaster;

/**
 * The light of one scenario, ready to be cast: {@value #REPLICATES} independently scrambled replicates, each worked
 * through in a fixed order by one thread, so that nothing depends on how many threads share them.
 */
public final class ReplicateCaster {
    /** Independent replicates behind every standard error. */
    public static final int REPLICATES = 16;

    private static final int LEAST_BITS = 6;

    private final Setup setup;
    private final LightCaster caster;
    private final List<ScrambledSobol> samples;
    private final int threads;

    /** Lays out the light of {@code scenario}; refuses a target that would stand in the mirror. */
    public ReplicateCaster(Scenario scenario, TraceOptions options) {
        this(scenario, options, options.seed());
    }

    /** The same for a dish that was glued with other luck. */
    public ReplicateCaster(Scenario scenario, TraceOptions options, long buildSeed) {
        this(scenario, scenario.built(), options, buildSeed);
    }

    /** The same with another dish in its place. */
    public ReplicateCaster(Scenario scenario, BuiltDish dish, TraceOptions options, long buildSeed) {
        setup = scenario.setup();
        caster = new LightCaster(dish, buildSeed, scenario.sun(), setup, scenario.aim());
        refuseInMirror(caster.surface(), setup, scenario.target());
        samples = ScrambledSobol.replicates(caster.dimensions(), options.seed(), REPLICATES);
        threads = Math.min(options.threads(), REPLICATES);
    }

    /** Refuses a scenario whose target would stand in the mirror. */
    public static void refuseInMirror(Scenario scenario) {
        Setup setup = scenario.setup();
        refuseInMirror(scenario.dish().surface(setup.sunInDish()), setup, scenario.target());
    }

    /** Refuses a target that would stand in the mirror. */
    public static void refuseInMirror(MirrorSurface surface, Setup setup, Target target) {
        double room = Clearance.aboveMirror(surface, setup, target);
        if (!(room > 0)) {
            String depth = Double.isFinite(room)
                    ? String.format(Locale.ROOT, "reach %.0f mm into", Math.max(1, -room * 1000))
                    : "stand in";
            throw new ImpossibleSetupException(
                    "the pan would " + depth + " the mirror: raise it or move it away from the dish");
        }
    }

    /** Whether the target stands clear of the mirror. */
    public static boolean hasRoom(Scenario scenario) {
        Setup setup = scenario.setup();
        MirrorSurface surface = scenario.dish().surface(setup.sunInDish());
        return Clearance.aboveMirror(surface, setup, scenario.target()) > 0;
    }

    /** Takes the batches of one replicate, in order, on one thread. */
    public interface Taker {
        /** Takes one batch. */
        void take(int replicate, LightBatch light);
    }

    /** Bits of a replicate's size, so that all replicates together have at least {@code rays}. */
    public static int bitsFor(long rays) {
        long each = (rays + REPLICATES - 1) / REPLICATES;
        return Math.max(LEAST_BITS, 64 - Long.numberOfLeadingZeros(each - 1));
    }

    /** Rays per batch where the first block has 2^{@code firstBits} rays. */
    public static int batchSize(int firstBits) {
        return (int) Math.min(LightCaster.BATCH, 1L << firstBits);
    }

    /** Threads that work on the replicates and tell {@code progress}. */
    public ReplicateWorkers workers(Progress progress) {
        return new ReplicateWorkers(threads, REPLICATES, progress);
    }

    /** Casts one block of every replicate; the work goes from share {@code from} to {@code to} of all work. */
    public void castBlock(ReplicateWorkers workers, int firstBits, int number, double from, double to, Taker taker) {
        Map<Thread, LightCaster.BatchCaster> ofThread = new ConcurrentHashMap<>();
        workers.run(from, to, (r, watch) -> {
            LightCaster.BatchCaster beam =
                    ofThread.computeIfAbsent(Thread.currentThread(), thread -> beam(r, firstBits, number));
            beam.goOn(samples.get(r), samples.get(r).block(firstBits, number));
            long batches = beam.batches();
            for (long k = 0; k < batches; k++) {
                taker.take(r, beam.cast(k));
                watch.step(k + 1, batches);
            }
        });
    }

    private LightCaster.BatchCaster beam(int r, int firstBits, int number) {
        return caster.new BatchCaster(samples.get(r), samples.get(r).block(firstBits, number));
    }

    /** Casts the first block of every replicate on the caller's thread. */
    public void castOnThisThread(int bits, ReplicateWorkers.Watch watch, Taker taker) {
        LightCaster.BatchCaster beam = beam(0, bits, 0);
        long batches = beam.batches();
        for (int r = 0; r < REPLICATES; r++) {
            beam.goOn(samples.get(r), samples.get(r).block(bits, 0));
            for (long k = 0; k < batches; k++) {
                taker.take(r, beam.cast(k));
                watch.step(r * batches + k + 1, REPLICATES * batches);
            }
        }
    }

    /** Casts the first block of every replicate. */
    public void castAll(int bits, Progress progress, Taker taker) {
        try (ReplicateWorkers workers = workers(progress)) {
            castBlock(workers, bits, 0, 0, 1, taker);
        }
    }

    /** Casts the first block of one replicate on the caller's thread. */
    public void castOne(int replicate, int bits, Consumer<LightBatch> taker) {
        batches(replicate, bits).forEach(taker);
    }

    /** The batches of the first block of one replicate, cast as they are asked for; each is valid until the next one is. */
    public Stream<LightBatch> batches(int replicate, int bits) {
        LightCaster.BatchCaster beam = beam(replicate, bits, 0);
        return LongStream.range(0, beam.batches()).mapToObj(beam::cast);
    }

    /** The mirrors. */
    public MirrorSurface surface() {
        return caster.surface();
    }

    /** How everything stands. */
    public Setup setup() {
        return setup;
    }

    /** What casts one batch. */
    public LightCaster caster() {
        return caster;
    }

    /** Threads that share the work. */
    public int threads() {
        return threads;
    }
}
