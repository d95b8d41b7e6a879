package simmerpoint.study.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.pan.PanStudy;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.Ledger;

class StoredLightTest {
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1 << 16).withThreads(2);

    private static Scenario example(Map<String, String> changes) throws ScenarioException {
        return ScenarioReader.builtIn().with(changes).scenario();
    }

    private static final List<Map<String, String>> MOVED = List.of(
            Map.of(),
            Map.of("stand.pull-back", "9 cm"),
            Map.of("stand.slide", "6 cm", "stand.side", "2 cm"),
            Map.of("pan.diameter", "18 cm", "pan.height", "25 cm", "stand.raise", "4 cm"),
            Map.of("mirror.reflectance", "0.6", "mirror.dust", "0.1"));

    private static final List<Function<Ledger, Estimate>> LINES = List.of(
            Ledger::gap,
            Ledger::shaded,
            Ledger::mirrorLoss,
            Ledger::missed,
            Ledger::underside,
            Ledger::wall,
            Ledger::lid,
            Ledger::absorbed);

    /** Within 5 standard errors of the trace itself, which uses the same points: 40 comparisons, 2e-5 false alarms. */
    @Test
    void catchesWhatATraceCatches() throws ScenarioException {
        StoredLight stored = StoredLight.cast(example(Map.of()), OPTIONS, Progress.NONE);
        for (Map<String, String> moved : MOVED) {
            Scenario scenario = example(moved);
            assertTrue(stored.serves(scenario), moved.toString());
            TraceResult again = stored.catchFor(scenario, Progress.NONE);
            TraceResult traced = TraceStudy.run(scenario, OPTIONS, Progress.NONE);
            for (Function<Ledger, Estimate> line : LINES) {
                Estimate a = line.apply(again.ledger());
                Estimate b = line.apply(traced.ledger());
                double error = Math.hypot(a.standardError(), b.standardError());
                assertEquals(b.value(), a.value(), 5 * error + 1e-9, moved + ": " + a + " against " + b);
            }
            Estimate peak = again.spot().peakFlux();
            Estimate tracedPeak = traced.spot().peakFlux();
            double error = Math.hypot(peak.standardError(), tracedPeak.standardError());
            assertEquals(tracedPeak.value(), peak.value(), 5 * error);
        }
    }

    /** A dish from a file whose panels cannot hide each other: its light serves wherever the pan stands. */
    @Test
    void servesAMeshWithoutFolds() throws ScenarioException {
        Path file = Path.of("../scenarios/triangle-dish.yaml");
        Scenario mesh = ScenarioReader.read(file).scenario();
        StoredLight stored = StoredLight.cast(mesh, OPTIONS, Progress.NONE);
        Scenario moved = ScenarioReader.read(file)
                .with(Map.of("stand.pull-back", "6 cm"))
                .scenario();
        assertTrue(stored.serves(moved));
        Estimate again = stored.catchFor(moved, Progress.NONE).ledger().caught();
        Estimate traced = TraceStudy.run(moved, OPTIONS, Progress.NONE).ledger().caught();
        double error = Math.hypot(again.standardError(), traced.standardError());
        assertEquals(traced.value(), again.value(), 5 * error, again + " against " + traced);
        assertEquals(
                PanStudy.POSITIONS,
                PanStudy.run(mesh, OPTIONS, Progress.NONE)
                        .moves()
                        .get(0)
                        .positions()
                        .size());
    }

    @Test
    void knowsWhatItCannotServe() throws ScenarioException {
        StoredLight stored = StoredLight.cast(example(Map.of()), OPTIONS.withRays(1 << 10), Progress.NONE);
        for (Map<String, String> other : List.of(
                Map.of("aim.drift.up", "1°"),
                Map.of("mirror.slope-error", "6 mrad"),
                Map.of("dish.surface.sectors", "16"),
                Map.of("sun.beam", "600 W/m²"))) {
            Scenario scenario = example(other);
            assertFalse(stored.serves(scenario), other.toString());
            assertThrows(IllegalArgumentException.class, () -> stored.catchFor(scenario, Progress.NONE));
        }
        Scenario inMirror = example(Map.of("stand.pull-back", "-75 cm"));
        assertThrows(ImpossibleSetupException.class, () -> stored.catchFor(inMirror, Progress.NONE));
    }
}
