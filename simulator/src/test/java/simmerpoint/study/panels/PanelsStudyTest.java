package simmerpoint.study.panels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.Ledger;

class PanelsStudyTest {
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1 << 16).withThreads(2);

    /** Aimed dead on, its pan square to the axis, so that the middle of all light is the pan's. */
    private static Scenario upright(Map<String, String> more) throws ScenarioException {
        Map<String, String> changes = new HashMap<>(Map.of(
                "sun.elevation", "90°",
                "aim.turn.up", "0°",
                "pan.diameter", "12 cm",
                "pan.water", "0.5 l"));
        changes.putAll(more);
        return ScenarioReader.builtIn().with(changes).scenario();
    }

    private static double incident(PanelsResult result) {
        return result.panels().stream().mapToDouble(PanelFigures::incident).sum();
    }

    private static double turned(PanelsResult result) {
        return result.panels().stream().mapToDouble(PanelFigures::caughtTurned).sum();
    }

    /** A crooked dish and a straight one, both with their panels turned, send the same into the pan: within 5 standard errors. */
    @Test
    void turningMendsCrookedPanels() throws ScenarioException {
        PanelsResult crooked = PanelsStudy.run(upright(Map.of("mirror.panel-tilt", "25 mrad")), OPTIONS, Progress.NONE);
        Scenario plan = upright(Map.of("mirror.panel-tilt", "0 mrad"));
        PanelsResult straight = PanelsStudy.run(plan, OPTIONS.withSeed(7), Progress.NONE);
        double error =
                TraceStudy.run(plan, OPTIONS, Progress.NONE).ledger().caught().standardError();
        assertTrue(crooked.caught() < 0.8 * straight.caught(), "they were crooked");
        assertTrue(straight.gain() < 0.05 * straight.caught(), "there was little to mend");
        // Two traces of as many rays; a thousandth for the middle of all light, which is itself sampled.
        assertEquals(turned(straight), turned(crooked), 5 * Math.sqrt(2) * error + 1e-3 * straight.caught());
    }

    /** What single panels send and land adds up to the trace's own ledger, of the same rays. */
    @Test
    void panelsAddUpToTheLedger() throws ScenarioException {
        Scenario scenario = ScenarioReader.builtIn().scenario();
        PanelsResult result = PanelsStudy.run(scenario, OPTIONS, Progress.NONE);
        Ledger ledger = TraceStudy.run(scenario, OPTIONS, Progress.NONE).ledger();
        assertEquals(ledger.reflected().value(), result.reflected(), 1e-9 * result.reflected());
        assertEquals(ledger.caught().value(), result.caught(), 1e-9 * result.caught());
    }

    /**
     * Lifting the outer edge of a panel by φ moves its light towards the dish's middle by 2φ times the way to the focus (law of
     * reflection; derived here): so the lift that the answer asks for takes back the landing place it tells, to first order:
     * within 2 % on a dish whose rim is 8° off the axis.
     */
    @Test
    void liftsTakeBackTheLandingPlace() throws ScenarioException {
        PanelsResult result = PanelsStudy.run(
                upright(Map.of(
                        "mirror.panel-tilt", "3 mrad",
                        "dish.focal-length", "3 m",
                        "dish.diameter", "80 cm")),
                OPTIONS,
                Progress.NONE);
        double meanX = result.panels().stream()
                        .mapToDouble(p -> p.incident() * p.landing().x())
                        .sum()
                / incident(result);
        double meanY = result.panels().stream()
                        .mapToDouble(p -> p.incident() * p.landing().y())
                        .sum()
                / incident(result);
        for (PanelFigures panel : result.panels()) {
            double x = panel.landing().x() - meanX;
            double y = panel.landing().y() - meanY;
            double far = panel.fromAxisMetres();
            double outwards = (x * panel.middle().x() + y * panel.middle().y()) / far;
            double sideways = (y * panel.middle().x() - x * panel.middle().y()) / far;
            assertEquals(
                    outwards,
                    2 * 3 * panel.turn().outerEdgeUp(),
                    2e-4 + 0.02 * Math.abs(outwards),
                    "outer edge of " + panel.number());
            assertEquals(
                    sideways,
                    2 * 3 * panel.turn().sideEdgeUp(),
                    2e-4 + 0.02 * Math.abs(sideways),
                    "side edge of " + panel.number());
        }
    }
}
