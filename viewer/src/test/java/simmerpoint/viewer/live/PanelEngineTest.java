package simmerpoint.viewer.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.ScenarioReader;
import simmerpoint.setup.Stand;
import simmerpoint.study.PanelWatts;
import simmerpoint.study.Progress;
import simmerpoint.study.TraceOptions;
import simmerpoint.study.TraceStudy;

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

    @Test
    void tellsWhatPanelsDoThatHideEachOther() throws InterruptedException, ScenarioException {
        follow(ScenarioReader.read(Path.of("../scenarios/triangle-dish.yaml"), Map.of())
                .scenario());
    }
}
