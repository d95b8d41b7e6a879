package simmerpoint.viewer.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.aim.AimAnswer;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.setup.Stand;
import simmerpoint.study.aim.AimPlan;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimStudy;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.PanStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

class LiveResultsTest {
    private static final TraceOptions QUICK = TraceOptions.defaults().withRays(1 << 10);

    private final LinkedBlockingQueue<Runnable> deliveries = new LinkedBlockingQueue<>();

    /** Runs what the lanes deliver on this thread, as the FX thread would. */
    private void until(BooleanSupplier condition) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
        while (!condition.getAsBoolean()) {
            assertTrue(System.nanoTime() < end, "waited in vain");
            Runnable next = deliveries.poll(100, TimeUnit.MILLISECONDS);
            if (next != null) {
                next.run();
            }
        }
    }

    @Test
    void studiesFollowInAPauseAndAreThoseOfTheCommandLine() throws InterruptedException {
        Scenario example = ScenarioReader.builtIn().scenario();
        Scenario newer = example.withStand(new Stand(0.03, 0, 0, 0));
        try (LiveResults live = new LiveResults(QUICK, deliveries::add)) {
            live.show(example);
            until(() -> live.stateProperty().get() != null);
            live.show(newer);
            until(() -> live.studiesProperty().get().panOf(newer).isPresent());
            PanResult expected = PanStudy.run(newer, QUICK, Progress.NONE);
            PanResult actual = live.studiesProperty().get().panOf(newer).orElseThrow();
            assertEquals(expected.here(), actual.here());
            assertEquals(
                    expected.moves().get(0).positions(), actual.moves().get(0).positions());
            assertTrue(live.studiesProperty().get().panOf(example).isEmpty());
        }
    }

    @Test
    void theStudyOfAimingIsThatOfTheCommandLine() throws InterruptedException {
        Scenario example = ScenarioReader.builtIn().scenario();
        try (LiveResults live = new LiveResults(QUICK, deliveries::add)) {
            live.show(example);
            until(() -> live.studiesProperty().get().timesOf(example).isPresent());
            assertTrue(live.studiesProperty().get().aimOf(example).isEmpty(), "what is read at once comes first");
            until(() -> live.studiesProperty().get().aimOf(example).isPresent());
            AimResult expected = AimStudy.run(example, AimPlan.USUAL, QUICK, Progress.NONE);
            AimResult actual = live.studiesProperty().get().aimOf(example).orElseThrow();
            assertEquals(AimAnswer.brief(expected.times()), AimAnswer.brief(actual.times()));
            assertEquals(expected.minutes(), actual.minutes());
            until(() -> !live.studiesProperty().get().working());
            assertEquals(1, live.studiesProperty().get().done());
        }
    }

    @Test
    void aDiscHasOnlyTheStudyOfAiming() throws Exception {
        Scenario disc = ScenarioReader.parse(
                        "disc",
                        "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\nplane: {disc: 20 cm}\n",
                        java.nio.file.Path.of(""))
                .scenario();
        try (LiveResults live = new LiveResults(QUICK, deliveries::add)) {
            live.show(disc);
            until(() -> live.studiesProperty().get().aimOf(disc).isPresent());
            assertTrue(live.studiesProperty().get().pan().isEmpty());
        }
    }

    @Test
    void studiesOfAnEarlierScenarioComeBackAtOnce() throws InterruptedException {
        Scenario example = ScenarioReader.builtIn().scenario();
        Scenario newer = example.withStand(new Stand(0.03, 0, 0, 0));
        try (LiveResults live = new LiveResults(QUICK, deliveries::add)) {
            live.show(example);
            until(() -> live.studiesProperty().get().aimOf(example).isPresent());
            PanResult pan = live.studiesProperty().get().panOf(example).orElseThrow();
            live.show(newer);
            until(() -> live.studiesProperty().get().panOf(newer).isPresent());
            live.show(example);
            until(() -> live.studiesProperty().get().panOf(example).isPresent());
            assertSame(pan, live.studiesProperty().get().panOf(example).orElseThrow());
            assertTrue(live.studiesProperty().get().aimOf(example).isPresent());
        }
    }
}
