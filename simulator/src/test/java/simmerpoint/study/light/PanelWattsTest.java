package simmerpoint.study.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.Ledger;

class PanelWattsTest {
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1 << 16).withThreads(2);

    private static Scenario example(Map<String, String> changes) throws ScenarioException {
        return ScenarioReader.builtIn().with(changes).scenario();
    }

    private static double sum(PanelWatts watts, IntToDoubleFunction line) {
        return IntStream.range(0, watts.panels()).mapToDouble(line).sum();
    }

    /** The same rays as the ledger's, so the sums differ by rounding only; and 5 standard errors from the trace itself. */
    @Test
    void panelsAddUpToTheLedger() throws ScenarioException {
        StoredLight stored = StoredLight.cast(example(Map.of()), OPTIONS, Progress.NONE);
        for (Map<String, String> moved : List.of(
                Map.<String, String>of(),
                Map.of("stand.pull-back", "9 cm", "stand.side", "2 cm"),
                Map.of("pan.diameter", "18 cm", "pan.height", "25 cm", "stand.raise", "4 cm"))) {
            Scenario scenario = example(moved);
            PanelWatts panels = stored.panelsFor(scenario);
            Ledger same = stored.catchFor(scenario, Progress.NONE).ledger();
            Ledger traced = TraceStudy.run(scenario, OPTIONS, Progress.NONE).ledger();
            check(sum(panels, panels::incident), same.incident(), traced.incident());
            check(sum(panels, panels::reflected), same.reflected(), traced.reflected());
            check(sum(panels, panels::caught), same.caught(), traced.caught());
        }
    }

    private static void check(double sum, Estimate same, Estimate traced) {
        assertEquals(same.value(), sum, 1e-9 * same.value());
        double error = Math.hypot(same.standardError(), traced.standardError());
        assertEquals(traced.value(), sum, 5 * error + 1e-9 * sum);
    }

    /**
     * A pan far to the right catches nothing of any panel; one square to the axis, twice as wide as the images of sharp, true
     * panels, catches all.
     */
    @Test
    void sharesGoFromNothingToAll() throws ScenarioException {
        Map<String, String> sharp = Map.of(
                "mirror.slope-error", "0.1 mrad",
                "mirror.beam-spread", "0 mrad",
                "mirror.wide-share", "0",
                "mirror.panel-tilt", "0 mrad",
                "pan.diameter", "40 cm",
                "sun.elevation", "90°",
                "aim.turn.up", "0°");
        StoredLight stored = StoredLight.cast(example(sharp), OPTIONS.withRays(1 << 14), Progress.NONE);
        PanelWatts all = stored.panelsFor(example(sharp));
        Map<String, String> aside = new java.util.HashMap<>(sharp);
        aside.put("stand.side", "3 m");
        PanelWatts none = stored.panelsFor(example(aside));
        for (int k = 0; k < all.panels(); k++) {
            assertEquals(0, none.caught(k), 0);
            if (all.reflected(k) > 0) {
                assertTrue(all.share(k).value() > 1 - 1e-6, k + ": " + all.share(k));
            }
        }
    }

    /** Of a disc cut from a paraboloid all panels of a ring are alike; 100,000 of them are told one by one. */
    @Test
    void manyPanelsAreToldOneByOne() throws ScenarioException {
        Map<String, String> fine =
                Map.of("dish.surface.sectors", "500", "dish.surface.rings", "200", "mirror.panel-tilt", "0 mrad");
        StoredLight stored = StoredLight.cast(example(fine), OPTIONS, Progress.NONE);
        PanelWatts panels = stored.panelsFor(example(fine));
        assertEquals(100_000, panels.panels());
        Ledger ledger = stored.catchFor(example(fine), Progress.NONE).ledger();
        assertEquals(
                ledger.caught().value(),
                sum(panels, panels::caught),
                1e-9 * ledger.caught().value());
    }

    /** A few rays, each where a mirror is; a caught one ends at the pan, and a pan out of reach catches none. */
    @Test
    void aSampleOfRaysIsDrawnFromTheLight() throws ScenarioException {
        StoredLight stored = StoredLight.cast(example(Map.of()), OPTIONS.withRays(1 << 14), Progress.NONE);
        RaySample sample = stored.sample(24);
        assertTrue(sample.count() > 15 && sample.count() <= 24, "rays: " + sample.count());
        List<RayPath> paths = sample.paths(example(Map.of()));
        assertTrue(paths.stream().anyMatch(p -> p.fate() == RayPath.Fate.SHADED));
        assertTrue(paths.stream().filter(p -> p.fate() == RayPath.Fate.CAUGHT).count() > sample.count() / 2);
        assertTrue(sample.paths(example(Map.of("stand.side", "3 m"))).stream()
                .allMatch(p -> p.fate() == RayPath.Fate.MISSED));
    }

    /** The dish of triangles with one corner lifted by 20 cm, whose panels hide others. */
    private static Scenario spiked(Path folder) throws ScenarioException, IOException {
        Path scenarios = Path.of("../scenarios");
        String flat = Files.readString(scenarios.resolve("triangle-dish.obj"));
        String corner = "v 0.0000 -415.6922 74.4828";
        assertTrue(flat.contains(corner));
        Files.writeString(folder.resolve("triangle-dish.obj"), flat.replace(corner, "v 0.0000 -415.6922 274.4828"));
        Path copy = Files.copy(scenarios.resolve("triangle-dish.yaml"), folder.resolve("spiked.yaml"));
        return ScenarioReader.read(copy).scenario();
    }

    /** The same rays as the trace's, dish by dish, so the sums differ by rounding only: also where panels hide each other. */
    @Test
    void tracedPanelsAddUpToTheLedger(@TempDir Path folder) throws ScenarioException, IOException {
        Scenario mesh = spiked(folder);
        assertFalse(
                StoredLight.cast(mesh, OPTIONS.withRays(1 << 12), Progress.NONE).serves(mesh));
        Map<String, String> low = Map.of("pan.diameter", "18 cm", "pan.height", "25 cm", "stand.raise", "4 cm");
        for (Scenario scenario : List.of(mesh, example(Map.of()), example(low))) {
            PanelWatts panels = PanelStudy.run(scenario, OPTIONS, Progress.NONE);
            Ledger ledger = TraceStudy.run(scenario, OPTIONS, Progress.NONE).ledger();
            assertEquals(ledger.incident().value(), sum(panels, panels::incident), 1e-6);
            assertEquals(ledger.reflected().value(), sum(panels, panels::reflected), 1e-6);
            assertEquals(ledger.caught().value(), sum(panels, panels::caught), 1e-6);
        }
    }

    /** Panel by panel the same as from stored light, which knows no blocking: 5 standard errors, 144 panels, 1e-4 false alarms. */
    @Test
    void bothWaysToldTheSamePanelByPanel() throws ScenarioException {
        Scenario scenario = example(Map.of("stand.side", "4 cm"));
        PanelWatts traced = PanelStudy.run(scenario, OPTIONS.withSeed(3), Progress.NONE);
        PanelWatts stored =
                StoredLight.cast(scenario, OPTIONS.withSeed(3), Progress.NONE).panelsFor(scenario);
        assertEquals(stored.panels(), traced.panels());
        for (int k = 0; k < traced.panels(); k++) {
            Estimate a = traced.share(k);
            Estimate b = stored.share(k);
            if (traced.reflected(k) == 0) {
                assertEquals(0, stored.reflected(k), "all of panel " + k + " is in the shade");
                continue;
            }
            assertEquals(b.value(), a.value(), 5 * Math.hypot(a.standardError(), b.standardError()), "panel " + k);
        }
    }
}
