package simmerpoint.scenario.doubts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.uncertainty.Draws;
import simmerpoint.units.UnitSystem;

class ScenarioDoubtsTest {
    private static final String DISH =
            "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: flat-rings, sectors: 24, rings: 6}}\n";

    private static CheckedScenario read(String more) throws Exception {
        return ScenarioReader.parse("t.yaml", DISH + more, Path.of(""));
    }

    private static Map<String, Doubt> of(String more) throws Exception {
        return ScenarioDoubts.of(read(more)).all().stream().collect(Collectors.toMap(Doubt::cause, d -> d));
    }

    /** One in ten is further off to each side by 1.281552 standard deviations, half of the ±. */
    @Test
    void theFilesOwnDoubtComesFirst() throws Exception {
        Doubt given = of("mirror: {reflectance: 0.85 ± 0.02}\n").get("mirror.reflectance");
        assertTrue(given.given());
        assertEquals(0.85, given.law().median(), 1e-9);
        assertEquals(0.85 + 0.01 * 1.281552, given.law().quantile(0.9), 1e-6);
        Doubt usual = of("mirror: {material: stretched rescue blanket}\n").get("mirror.reflectance");
        assertFalse(usual.given());
        assertEquals(0.78 - 0.04 * 1.281552, usual.law().quantile(0.1), 1e-4);
    }

    @Test
    void anyQuantityMayCarryADoubt() throws Exception {
        Doubt height = of("stand: {tripod-height: 60 ± 5 cm}\n").get("stand.tripod-height");
        assertEquals(0.6 + 0.025 * 1.281552, height.law().quantile(0.9), 1e-6);
    }

    @Test
    void whatIsSaidToBeExactIsLeftOut() throws Exception {
        assertTrue(of("air: {wind: 1 m/s ± 0 m/s}\n").get("air.wind") == null);
        assertTrue(of("").containsKey("air.wind"));
    }

    /** A mirror without dust may have some, one without a panel askew is glued by hand all the same. */
    @Test
    void nothingIsRarelyNothing() throws Exception {
        Map<String, Doubt> all = of("");
        assertEquals(0, all.get("mirror.dust").law().quantile(0.001), 1e-4);
        assertTrue(all.get("mirror.dust").law().quantile(0.95) < 0.05);
        assertEquals(0.0078, all.get("mirror.panel-tilt").law().quantile(0.95), 0.0001);
        Map<String, Doubt> smooth =
                ScenarioDoubts.of(read("").with(Map.of("dish.surface.cut", "smooth"))).all().stream()
                        .collect(Collectors.toMap(Doubt::cause, d -> d));
        assertFalse(smooth.containsKey("mirror.panel-tilt"));
    }

    @ParameterizedTest
    @CsvSource({
        "'', 0.07",
        "'sun: {beam: 700 W/m²}', 0.05",
        "'sun: {beam: 700 W/m² ± 70 W/m²}', 0.05",
        "'place: {latitude: 47°, longitude: 8°, zone: UTC+1}\nwhen: {date: 2026-06-21}', 0.09",
        "'place: {latitude: 47°, longitude: 8°, zone: UTC+1}\nwhen: {date: 2026-06-21}\nsky: {setting: mountains}', 0.04",
        "'place: {latitude: 47°, longitude: 8°, zone: UTC+1}\nwhen: {date: 2026-06-21}\nsky: {kind: measured, beam: 700 W/m²}', 0.025"
    })
    void theBeamByWhereItComesFrom(String lines, double deviation) throws Exception {
        Doubt beam = of(lines + "\n").get("beam");
        assertEquals(1 + deviation * 1.281552, beam.law().quantile(0.9), 1e-4);
    }

    @Test
    void aDiscHasNoPan() throws Exception {
        Map<String, Doubt> all = of("plane: {disc: 20 cm}\n");
        assertFalse(all.containsKey("losses.dry") || all.containsKey("air.wind") || all.containsKey("pan.absorptance"));
        assertTrue(all.containsKey("stand.side") && all.containsKey("aim.up"));
    }

    /** Every draw changes every part of the cooker that is in doubt. */
    @Test
    void drawsACooker() throws Exception {
        ScenarioDoubts doubts = ScenarioDoubts.of(read("pan: {diameter: 24 cm}\n"));
        Draws draws = Draws.of(doubts.all().size(), 3, 1);
        DrawnCooker one = doubts.cooker(draws, 2).orElseThrow();
        Scenario plain = read("pan: {diameter: 24 cm}\n").scenario();
        assertFalse(one.scenario().mirror().equals(plain.mirror()));
        assertFalse(one.scenario().aim().isDeadOn());
        assertFalse(one.scenario().stand().equals(plain.stand()));
        assertFalse(one.scenario().target().equals(plain.target()));
        assertFalse(one.scenario()
                .cooking()
                .orElseThrow()
                .around()
                .equals(plain.cooking().orElseThrow().around()));
        assertFalse(one.losses().dry() == 1);
        assertEquals(plain.dish(), one.scenario().dish());
        DrawnCooker exact = ScenarioDoubts.none(read("pan: {diameter: 24 cm}\n"))
                .cooker(Draws.of(0, 3, 1), 2)
                .orElseThrow();
        assertEquals(plain, exact.scenario());
    }

    /** No wind is a wind of which one in twenty is more than 0.6 m/s: a standard deviation of 0.3 m/s above nothing. */
    @Test
    void aFigureOfNothingMayBeSomething() throws Exception {
        Doubt calm = of("air: {wind: 0 m/s}\npan: {diameter: 24 cm}\n").get("air.wind");
        assertEquals("up to 0.6 m/s", calm.size().in(UnitSystem.METRIC));
        assertEquals("up to 1.3 mph", calm.size().in(UnitSystem.INCH));
        assertEquals(0.6, calm.law().quantile(0.9545), 0.001);
    }

    @Test
    void saysHowBadlyAFigureIsKnown() throws Exception {
        Map<String, Doubt> all = of(
                "mirror: {reflectance: 0.85 ± 0.03, panel-tilt: 0 mrad, dust: 3 %}\nair: {temperature: 20 °C ± 3 K}\n"
                        + "sun: {elevation: 50°, beam: 800 W/m² ± 40 W/m²}\naim: {by-hand: 1°}\nstand: {side: 1 in ± 1/4 in}\n"
                        + "pan: {diameter: 24 cm}\n");
        Map<String, String> metric = Map.of(
                "mirror.reflectance", "± 0.03",
                "mirror.dust", "a factor of 2",
                "mirror.panel-tilt", "up to 8 mrad",
                "air.temperature", "± 3 K",
                "beam", "± 5 %",
                "aim.up", "± 2°",
                "stand.pull-back", "± 2 cm",
                "losses.dry", "a factor of 1.35");
        metric.forEach((cause, size) -> assertEquals(size, all.get(cause).size().in(UnitSystem.METRIC), cause));
        assertEquals("± 0.25 in", all.get("stand.side").size().in(UnitSystem.INCH));
        assertEquals("± 0.79 in", all.get("stand.pull-back").size().in(UnitSystem.INCH));
        assertEquals("± 5.4 °F", all.get("air.temperature").size().in(UnitSystem.INCH));
        assertEquals("up to 8 mrad", all.get("mirror.panel-tilt").size().in(UnitSystem.INCH));
    }

    /** Half of the light lost to dust may be all of it: the draw stays within what the key allows. */
    @Test
    void drawsStayWithinWhatAKeyAllows() throws Exception {
        ScenarioDoubts doubts = ScenarioDoubts.of(read("mirror: {dust: 50 %}\npan: {diameter: 24 cm}\n"));
        Draws draws = Draws.of(doubts.all().size(), 7, 1);
        for (int k = 0; k < 128; k++) {
            double dust =
                    doubts.cooker(draws, k).orElseThrow().scenario().mirror().dust();
            assertTrue(dust > 0 && dust < 1, "dust " + dust);
        }
    }

    @Test
    void everyRowNamesItsSourceAndAMeasurement() {
        for (DoubtTable.Row row : DoubtTable.rows().values()) {
            assertFalse(
                    row.source().isBlank()
                            || row.measurement().isBlank()
                            || row.name().isBlank(),
                    row.cause());
        }
    }
}
