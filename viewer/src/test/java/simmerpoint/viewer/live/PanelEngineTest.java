package simmerpoint.viewer.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.setup.Stand;
import simmerpoint.study.light.PanelWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;

class PanelEngineTest {
    private static final TraceOptions USUAL = TraceOptions.defaults();

    private static double caught(PanelWatts panels) {
        return IntStream.range(0, panels.panels()).mapToDouble(panels::caught).sum();
    }

    /**
     * A few rays first, then as many as there should be behind each panel; all panels together catch what a trace says, to 1 %
     * (many times the noise of either), and so again once the pan has moved.
     */
    private static void follow(Scenario scenario) throws InterruptedException {
        StateLog<PanelState> log = new StateLog<>();
        try (PanelEngine engine = new PanelEngine(USUAL, Runnable::run, log::add)) {
            engine.show(scenario);
            log.await(s -> log.all().size() > 1);
            Scenario moved = scenario.withStand(new Stand(0.06, 0, 0, 0));
            engine.show(moved);
            log.await(s -> s.scenario().equals(moved) && s.current());
            for (PanelState state : log.all()) {
                assertTrue(state.current(), "never those of an earlier scenario, never refused");
                assertTrue(state.sample().count() > 10, "rays to be drawn");
                double expected = TraceStudy.run(state.scenario(), USUAL, Progress.NONE)
                        .ledger()
                        .caught()
                        .value();
                assertEquals(expected, caught(state.panels().orElseThrow()), 0.01 * expected);
            }
        }
    }

    @Test
    void tellsWhatThePanelsOfARingedDishDo() throws InterruptedException {
        follow(ScenarioReader.builtIn().scenario());
    }

    /** The dish of triangles with one corner lifted by 20 cm. */
    @Test
    void tellsWhatPanelsDoThatHideEachOther(@TempDir Path folder)
            throws InterruptedException, ScenarioException, IOException {
        Path scenarios = Path.of("../scenarios");
        String flat = Files.readString(scenarios.resolve("triangle-dish.obj"));
        Files.writeString(
                folder.resolve("triangle-dish.obj"),
                flat.replace("v 0.0000 -415.6922 74.4828", "v 0.0000 -415.6922 274.4828"));
        Path copy = Files.copy(scenarios.resolve("triangle-dish.yaml"), folder.resolve("spiked.yaml"));
        follow(ScenarioReader.read(copy).scenario());
    }
}
