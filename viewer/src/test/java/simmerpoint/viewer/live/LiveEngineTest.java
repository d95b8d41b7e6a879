package simmerpoint.viewer.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.setup.Stand;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

class LiveEngineTest {
    private static final TraceOptions USUAL = TraceOptions.defaults();

    private final Scenario example = ScenarioReader.builtIn().scenario();

    private static Scenario pulledBack(Scenario scenario, double metres) {
        return scenario.withStand(new Stand(metres, 0, 0, 0));
    }

    private static void assertSameFigures(TraceResult expected, TraceResult actual) {
        assertEquals(expected.ledger(), actual.ledger());
        assertEquals(expected.spot(), actual.spot());
        assertEquals(expected.run().rays(), actual.run().rays());
    }

    @Test
    void theLastResultIsTheOneTheCommandLineGives() throws InterruptedException {
        StateLog<LiveState> log = new StateLog<>();
        try (LiveEngine engine = new LiveEngine(USUAL, Runnable::run, log::add)) {
            engine.show(example);
            LiveState last = log.await(LiveState::settled);
            assertSameFigures(
                    TraceStudy.run(example, USUAL, Progress.NONE), last.result().orElseThrow());
            assertEquals(1, last.done());
        }
    }

    @Test
    void aCoarseAnswerComesFirstAndFinerOnesFollow() throws InterruptedException {
        StateLog<LiveState> log = new StateLog<>();
        try (LiveEngine engine = new LiveEngine(USUAL, Runnable::run, log::add)) {
            engine.show(example);
            log.await(LiveState::settled);
        }
        LiveState first = log.all().get(0);
        assertEquals(LiveEngine.COARSE_RAYS, first.result().orElseThrow().run().rays());
        assertFalse(first.settled());
        List<Long> rays = log.all().stream()
                .map(s -> s.result().orElseThrow().run().rays())
                .distinct()
                .toList();
        assertEquals(List.of(1L << 13, 1L << 15, 1L << 17), rays);
        List<Double> done = log.all().stream().map(LiveState::done).toList();
        assertEquals(done.stream().sorted().toList(), done);
    }

    @Test
    void movingThePanCatchesStoredLightAndThenTracesAnew() throws InterruptedException {
        StateLog<LiveState> log = new StateLog<>();
        try (LiveEngine engine = new LiveEngine(USUAL, Runnable::run, log::add)) {
            engine.show(example);
            log.await(LiveState::settled);
            // The light is kept after the answer is told; a second scenario would overtake that, so wait for it.
            Thread.sleep(500);
            Scenario moved = pulledBack(example, 0.04);
            engine.show(moved);
            LiveState first = log.await(s -> s.run() == 2);
            assertTrue(first.current());
            assertEquals(
                    LiveEngine.STORED_RAYS, first.result().orElseThrow().run().rays());
            LiveState last = log.await(s -> s.run() == 2 && s.settled());
            assertSameFigures(
                    TraceStudy.run(moved, USUAL, Progress.NONE), last.result().orElseThrow());
            // Same light, other draws: within 5 joint standard errors, passed by chance once in some thousands of
            // times.
            var stored = first.result().orElseThrow().ledger().caught();
            var traced = last.result().orElseThrow().ledger().caught();
            assertEquals(
                    traced.value(), stored.value(), 5 * Math.hypot(stored.standardError(), traced.standardError()));
        }
    }

    @Test
    void aNewerScenarioBreaksTheOlderOffAndIsTheLastToSettle() throws InterruptedException {
        StateLog<LiveState> log = new StateLog<>();
        long start = System.nanoTime();
        try (LiveEngine engine = new LiveEngine(USUAL.withRays(1L << 34), Runnable::run, log::add)) {
            engine.show(example);
            log.await(s -> s.run() == 1 && s.done() > 0);
            Scenario newer = pulledBack(example, 0.02);
            engine.show(newer);
            LiveState seen = log.await(s -> s.run() == 2 && s.current());
            assertSame(newer, seen.scenario());
        }
        // 2^34 rays take a quarter of an hour; a run that is not broken off would be seen.
        assertTrue(System.nanoTime() - start < TimeUnit.SECONDS.toNanos(30), "the older run went on");
        List<LiveState> all = log.all();
        assertTrue(all.stream().noneMatch(s -> s.run() == 1 && s.settled()));
        int firstNew =
                all.indexOf(all.stream().filter(s -> s.run() == 2).findFirst().orElseThrow());
        assertTrue(all.subList(firstNew, all.size()).stream().allMatch(s -> s.run() == 2), "a late state came");
    }

    /** A move every 5 ms: sixty on an idle machine, more where other programs keep it busy. */
    @Test
    void somethingIsSeenHoweverFastScenariosCome() throws InterruptedException {
        StateLog<LiveState> log = new StateLog<>();
        int shown = 0;
        try (LiveEngine engine = new LiveEngine(USUAL, Runnable::run, log::add)) {
            while (shown < 60 || (seenOnTheWay(log) < 3 && shown < 1000)) {
                shown++;
                engine.show(pulledBack(example, shown * 0.0001));
                Thread.sleep(5);
            }
            int runs = shown;
            LiveState last = log.await(s -> s.run() == runs && s.settled());
            assertEquals(shown * 0.0001, last.scenario().stand().pullBackMetres(), 1e-12);
        }
        int last = shown;
        long seen = log.all().stream()
                .filter(s -> s.run() < last && s.current())
                .map(LiveState::run)
                .distinct()
                .count();
        assertTrue(seen >= 3, "only " + seen + " of " + shown + " moves were seen on the way");
    }

    private static long seenOnTheWay(StateLog<LiveState> log) {
        return log.all().stream()
                .filter(LiveState::current)
                .map(LiveState::run)
                .distinct()
                .count();
    }

    @Test
    void aPanInTheMirrorIsRefusedInASentenceAndTheOldAnswerStays() throws InterruptedException {
        StateLog<LiveState> log = new StateLog<>();
        try (LiveEngine engine = new LiveEngine(USUAL, Runnable::run, log::add)) {
            engine.show(example);
            log.await(LiveState::settled);
            engine.show(pulledBack(example, -example.dish().focalLengthMetres()));
            LiveState refused = log.await(s -> s.run() == 2);
            assertTrue(refused.refusal().orElseThrow().startsWith("The pan would reach"), refused.toString());
            assertTrue(refused.settled());
            assertFalse(refused.current());
            assertSame(example, refused.result().orElseThrow().scenario());
            engine.show(example);
            log.await(s -> s.run() == 3 && s.settled() && s.refusal().isEmpty());
        }
    }

    /** Undo: the answer that was there comes back whole and at once, without a coarse one before it. */
    @Test
    void whatWasSettledBeforeIsSettledAtOnce() throws InterruptedException {
        StateLog<LiveState> log = new StateLog<>();
        Scenario wider = pulledBack(example, 0.05);
        try (LiveEngine engine = new LiveEngine(USUAL, Runnable::run, log::add)) {
            engine.show(example);
            TraceResult before = log.await(LiveState::settled).result().orElseThrow();
            engine.show(wider);
            log.await(s -> s.settled() && s.scenario().equals(wider));
            int seen = log.all().size();
            engine.show(example);
            log.await(s -> log.all().size() > seen);
            LiveState back = log.all().get(seen);
            assertTrue(back.settled() && back.current());
            assertSame(before, back.result().orElseThrow());
        }
    }
}
