package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.Stand;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

/** How a trace starts, stops and tells of itself. */
class TraceStudyTest {
    private static final TraceOptions OPTIONS = TraceOptions.defaults().withThreads(2);

    private static Scene scene() {
        return Scene.of(Scene.rings(1.2, 0.8, 0.06, 24, 6), Scene.pan(0.08, 0.1))
                .with(Mirror.plain(0.85, 8e-3))
                .elevation(0.8);
    }

    private static boolean powerOfTwo(long n) {
        return Long.bitCount(n) == 1;
    }

    /** As many rays as asked for, rounded up to a power of two in each of the replicates. */
    @Test
    void castsAtLeastTheRaysAskedFor() {
        for (long rays : new long[] {1, 1000, 1024, 1025, 40_000, 65_536}) {
            TraceResult r = scene().trace(OPTIONS.withRays(rays));
            long cast = r.run().rays();
            assertTrue(cast >= rays && (cast < 2 * rays || cast == 1024) && powerOfTwo(cast), rays + " asked: " + cast);
            assertTrue(r.precisionReached());
        }
    }

    /** Looks after 65,536 rays and every doubling: the first look that is good enough ends it. */
    @Test
    void stopsAtTheFirstLookThatIsPreciseEnough() {
        double last = Double.POSITIVE_INFINITY;
        List<Long> stops = new ArrayList<>();
        for (double precision : new double[] {0.05, 4e-4, 2e-4, 1e-4}) {
            TraceResult r = scene().trace(OPTIONS.withRays(1L << 22).withPrecision(precision));
            Estimate caught = r.ledger().caught();
            assertTrue(r.precisionReached());
            assertTrue(caught.relativeError() <= precision, precision + " asked, " + caught);
            assertTrue(powerOfTwo(r.run().rays()) && r.run().rays() >= 65_536);
            assertTrue(caught.relativeError() <= last);
            last = caught.relativeError();
            stops.add(r.run().rays());
        }
        assertEquals(65_536, stops.get(0));
        assertTrue(stops.get(3) > 65_536, "stops " + stops);
        long before = stops.get(3) / 2;
        TraceResult lookBefore = scene().trace(OPTIONS.withRays(before).withPrecision(1e-12));
        assertEquals(before, lookBefore.run().rays());
        assertTrue(lookBefore.ledger().caught().relativeError() > 1e-4, "the look before was good enough already");
    }

    @Test
    void saysWhenThePrecisionWasNotReached() {
        TraceResult r = scene().trace(OPTIONS.withRays(100_000).withPrecision(1e-9));
        assertFalse(r.precisionReached());
        assertEquals(131_072, r.run().rays());
    }

    /**
     * Blocks after each other are the points of one block as large as all of them: what does not depend on the mirrors' errors differs by
     * rounding alone. Which of the lighter errors are followed is chosen batch by batch, and the batches are others; so what is caught
     * differs by chance, by less than what both are off.
     */
    @Test
    void aStoppedTraceEqualsOneOfTheSameSize() {
        TraceResult looked = scene().trace(OPTIONS.withRays(1L << 18).withPrecision(1e-9));
        TraceResult whole = scene().trace(OPTIONS.withRays(1L << 18));
        assertEquals(whole.run().rays(), looked.run().rays());
        same(whole.ledger().outline(), looked.ledger().outline());
        same(whole.ledger().incident(), looked.ledger().incident());
        same(whole.ledger().shaded(), looked.ledger().shaded());
        same(whole.ledger().reflected(), looked.ledger().reflected());
        near(whole.ledger().caught(), looked.ledger().caught());
        near(whole.ledger().wall(), looked.ledger().wall());
        near(whole.spot().peakFlux(), looked.spot().peakFlux());
    }

    /** One standard error; 2 of the difference if the two shared nothing are 2.8. */
    private static void near(Estimate a, Estimate b) {
        assertEquals(a.value(), b.value(), a.standardError());
    }

    private static void same(Estimate a, Estimate b) {
        assertEquals(a.value(), b.value(), 1e-10 * a.value());
        assertEquals(a.standardError(), b.standardError(), 1e-6 * a.standardError());
    }

    @Test
    void precisionStopsAtTheSamePlaceOnAnyNumberOfThreads() {
        TraceOptions options = OPTIONS.withRays(1L << 20).withPrecision(5e-4);
        TraceResult one = scene().trace(options.withThreads(1));
        TraceResult four = scene().trace(options.withThreads(4));
        assertEquals(one.run().rays(), four.run().rays());
        assertEquals(one.ledger(), four.ledger());
        assertEquals(one.spot(), four.spot());
    }

    @Test
    void progressNeverFallsAndEndsAtOne() {
        for (double precision : new double[] {0, 1e-9}) {
            List<Double> told = new ArrayList<>();
            TraceStudy.run(
                    scene().scenario(),
                    OPTIONS.withRays(1L << 20).withPrecision(precision),
                    (done, detail) -> told.add(done));
            double last = 0;
            for (double done : told) {
                assertTrue(done >= last && done <= 1, "told " + told);
                last = done;
            }
            assertEquals(1, last, "told " + told);
        }
    }

    @Test
    void progressTellsHowManyRaysAndHowPrecise() {
        List<String> words = new ArrayList<>();
        TraceStudy.run(
                scene().scenario(),
                OPTIONS.withRays(1L << 18).withPrecision(1e-9),
                (done, detail) -> words.add(detail));
        assertTrue(words.stream().anyMatch(w -> w.startsWith("65,536 rays, ±")), "words " + words);
        assertTrue(words.stream().anyMatch(w -> w.startsWith("131,072 rays, ±")), "words " + words);
    }

    /** Far more rays than the time allows: only a stop that is heard can end this. */
    @Test
    @Timeout(20)
    void aStopIsHeard() {
        TraceOptions endless = OPTIONS.withRays(1L << 36);
        int[] calls = {0};
        Progress stop = (done, detail) -> ++calls[0] < 3;
        assertThrows(CancellationException.class, () -> TraceStudy.run(scene().scenario(), endless, stop));
        assertEquals(3, calls[0]);
        assertThrows(
                CancellationException.class,
                () -> TraceStudy.run(scene().scenario(), endless.withPrecision(1e-9), (done, detail) -> false));
        assertThrows(
                CancellationException.class,
                () -> MoveStudy.run(
                        scene().scenario(), MoveStudy.Move.RAISE, 0, 0.1, 5, endless, (done, detail) -> false));
    }

    @Test
    @Timeout(20)
    void anInterruptIsHeard() {
        Thread.currentThread().interrupt();
        assertThrows(
                CancellationException.class,
                () -> TraceStudy.run(scene().scenario(), OPTIONS.withRays(1L << 36), Progress.NONE));
        assertTrue(Thread.interrupted(), "the interrupt is kept for whoever asks next");
    }

    @Test
    void aPanInsideTheMirrorIsRefusedInASentence() {
        ImpossibleSetupException e = assertThrows(
                ImpossibleSetupException.class,
                () -> scene().with(new Stand(-0.85, 0, 0, 0)).trace(OPTIONS.withRays(1024)));
        assertTrue(e.getMessage().contains(" mm into the mirror"), e.getMessage());
    }

    /** Nothing caught is an answer, not a failure, and no figure is NaN. */
    @Test
    void aPanThatCatchesNothingIsAnAnswer() {
        TraceResult r =
                scene().with(Scene.disc(0.01)).with(new Stand(0, 0, 0, 3)).trace(OPTIONS.withRays(4096));
        assertEquals(0, r.ledger().caught().value());
        assertEquals(0, r.spot().interceptFactor().value());
        assertEquals(Estimate.exact(0), r.spot().evenness());
        assertEquals(0, r.spot().centroidX().value());
        assertEquals(0, r.spot().peakFlux().value());
        assertTrue(r.spot().ellipse().isEmpty());
    }
}
