package simmerpoint.viewer.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.viewer.FxThread;

class OnDemandStudyTest {
    private static void until(String what, OnDemandStudy<?> study) {
        FxThread.until(what, () -> !study.stateProperty().get().working());
    }

    @Test
    void findsWhatItIsAskedAndKnowsOfWhat() throws Exception {
        CheckedScenario one = ScenarioReader.builtIn();
        CheckedScenario other = one.with(Map.of("stand.raise", "1 cm"));
        try (OnDemandStudy<String> study = new OnDemandStudy<>(
                "test",
                0,
                javafx.application.Platform::runLater,
                (read, progress) -> read.scenario().title())) {
            FxThread.run(() -> study.start(one));
            assertTrue(FxThread.get(() -> study.stateProperty().get().isOf(one)));
            until("it is found", study);
            StudyRun<String> found = FxThread.get(() -> study.stateProperty().get());
            assertEquals(Optional.of(one.scenario().title()), found.result());
            assertTrue(found.hasResultOf(one));
            assertFalse(found.hasResultOf(other));
            FxThread.run(study::forget);
            assertTrue(FxThread.get(() -> study.stateProperty().get().result().isEmpty()));
        }
    }

    /** A refusal may be over when it is asked for again, as that of a file which was mended since. */
    @Test
    void whatWasRefusedIsAskedAgainOnlyIfSomebodyAsks() throws Exception {
        CheckedScenario one = ScenarioReader.builtIn();
        AtomicInteger times = new AtomicInteger();
        try (OnDemandStudy<String> study =
                new OnDemandStudy<>("test", 0, javafx.application.Platform::runLater, (read, progress) -> {
                    if (times.incrementAndGet() == 1) {
                        throw new ImpossibleSetupException("not yet");
                    }
                    return "done";
                })) {
            FxThread.run(() -> study.start(one));
            until("it is refused", study);
            assertEquals(
                    Optional.of("Not yet."),
                    FxThread.get(() -> study.stateProperty().get().refusal()));
            FxThread.run(() -> study.start(one));
            assertFalse(
                    FxThread.get(() -> study.stateProperty().get().working()), "it refuses by itself over and over");
            FxThread.run(() -> study.startAnew(one));
            until("it is found", study);
            assertEquals(
                    Optional.of("done"),
                    FxThread.get(() -> study.stateProperty().get().result()));
        }
    }

    @Test
    void canBeStoppedAndAskedAgain() throws Exception {
        CheckedScenario one = ScenarioReader.builtIn();
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch ended = new CountDownLatch(1);
        try (OnDemandStudy<String> study =
                new OnDemandStudy<>("test", 0, javafx.application.Platform::runLater, (read, progress) -> {
                    if (begun.getCount() == 0) {
                        return "done";
                    }
                    begun.countDown();
                    try {
                        while (progress.report(0.5, "half")) {
                            Thread.onSpinWait();
                        }
                        return "gave up";
                    } finally {
                        ended.countDown();
                    }
                })) {
            FxThread.run(() -> study.start(one));
            assertTrue(begun.await(10, TimeUnit.SECONDS));
            FxThread.run(study::stop);
            assertTrue(ended.await(10, TimeUnit.SECONDS), "it works on");
            FxThread.settle();
            StudyRun<String> stopped = FxThread.get(() -> study.stateProperty().get());
            assertFalse(stopped.working());
            assertTrue(stopped.result().isEmpty(), stopped.toString());
            FxThread.run(() -> study.start(one));
            until("it is found", study);
            assertEquals(
                    Optional.of("done"),
                    FxThread.get(() -> study.stateProperty().get().result()));
        }
    }
}
