package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.heat.HeatLevelThresholds;
import simmerpoint.heat.PanContents;
import simmerpoint.heat.SurfaceOptics;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.pan.FinishCatalogue;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;

/** What the file says of pan, water, air, heat levels and heights. */
class KitchenReadingTest {
    private static final String DISH = "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\n";

    private static CheckedScenario read(String sections) throws ScenarioException {
        return ScenarioReader.parse("t.yaml", DISH + sections, Path.of(""));
    }

    private static CookingSetup kitchen(String sections) throws ScenarioException {
        return read(sections).scenario().cooking().orElseThrow();
    }

    private static SurfaceOptics skin(String finish) {
        return SurfaceOptics.of(FinishCatalogue.find(finish).orElseThrow());
    }

    @Test
    void withoutAWordItIsTheUsualKitchen() throws Exception {
        Scenario s = read("").scenario();
        assertEquals(Optional.of(CookingSetup.usual((Pan) s.target())), s.cooking());
        assertEquals(GroundHeights.USUAL, s.heights());
        assertEquals(new GroundHeights(0.6, 0.4, 1.3), s.heights());
        assertEquals(Optional.empty(), s.site());
    }

    @Test
    void readsThePanAsAVessel() throws Exception {
        CookingSetup k = kitchen(
                "pan:\n  material: Cast Iron\n  mass: 4.2 kg\n  water: 3 l\n  water-temperature: 59 °F\n"
                        + "  lid: no\n  finish: black paint\n  lid-finish: polished stainless steel\n  wall-finish: white enamel\n");
        ThermalPan v = k.vessel();
        assertEquals("cast iron", v.material().name());
        assertEquals(4.2, v.massKilograms());
        assertEquals(new PanContents(3, 15), k.contents());
        assertEquals(false, v.lidOn());
        assertEquals("black paint", v.pan().finish().name());
        assertEquals(skin("black paint"), v.underside());
        assertEquals(skin("white enamel"), v.wetWall());
        assertEquals(skin("white enamel"), v.dryWall());
        assertEquals(skin("polished stainless steel"), v.lid());
    }

    @ParameterizedTest
    @CsvSource({"2 kg, 2", "2 l, 2", "1500 ml, 1.5", "2 lb, 0.90718474", "4 cups, 0.946352946"})
    void waterIsReadByMassOrVolume(String typed, double kilograms) throws Exception {
        assertEquals(
                kilograms, kitchen("pan: {water: " + typed + "}\n").contents().waterKilograms(), 1e-15);
    }

    /** Outside of a level cylinder, with and without its lid, by hand: π/4·0.2² + π·0.2·0.1 = 0.09425 m². */
    @ParameterizedTest
    @CsvSource({
        "stainless steel, off, 0.754",
        "stainless steel, on, 1.005",
        "aluminium, off, 0.660",
        "cast iron, off, 2.827",
        "copper, off, 1.225",
        "glass, off, 0.942"
    })
    void aPanOfUnknownMassIsAUsualOne(String material, String lid, double kilograms) throws Exception {
        CookingSetup k =
                kitchen("pan: {diameter: 20 cm, height: 10 cm, material: " + material + ", lid: " + lid + "}\n");
        assertEquals(kilograms, k.vessel().massKilograms(), 0.001);
    }

    @Test
    void readsAirAndLevelsAndHeights() throws Exception {
        Scenario s = read("air: {temperature: -5 °C, wind: 9 km/h, humidity: 80 %, sky: covered, altitude: 1500 m}\n"
                        + "heat-levels: {hold: 65 °C, simmer-below-boiling: 9 °F, boil-steam: 5 kg/(h·m²),"
                        + " fast-boil-steam: 15 kg/(h m²)}\n"
                        + "stand: {tripod-height: 2 ft, lowest-pan: 50 cm, highest-pan: 1.4 m}\n")
                .scenario();
        CookingSetup k = s.cooking().orElseThrow();
        assertEquals(new Surroundings(-5, 2.5, 1500, 0.8, false), k.around());
        assertEquals(new HeatLevelThresholds(65, 5, 5, 15), k.levels());
        assertEquals(new GroundHeights(0.6096, 0.5, 1.4), s.heights());
    }

    @Test
    void theAirIsAsHighAsThePlace() throws Exception {
        String place =
                "place: {latitude: 47°, longitude: 8°, altitude: 1200 m, zone: UTC+1}\nwhen: {date: 2026-06-21}\n";
        assertEquals(1200, kitchen(place).around().altitudeMetres());
        assertEquals(1200, kitchen(place + "air: {altitude: 1200 m}\n").around().altitudeMetres());
        assertEquals(
                900,
                kitchen(place.replace("altitude: 1200 m, ", "") + "air: {altitude: 900 m}\n")
                        .around()
                        .altitudeMetres());
    }

    @Test
    void aPlaneHasNoKitchen() throws Exception {
        assertEquals(Optional.empty(), read("plane: {disc: 20 cm}\n").scenario().cooking());
    }

    /** Bare steel takes up less than half of what black enamel does, so the finish is asked for. */
    @Test
    void aFinishThatIsNotGivenIsAskedFor() throws Exception {
        List<String> warnings = read("pan: {diameter: 22 cm}\n").warnings();
        assertEquals(1, warnings.size(), warnings.toString());
        assertTrue(warnings.get(0).startsWith("pan.finish: not given; black enamel is assumed"), warnings.get(0));
        assertEquals(List.of(), read("pan: {underside-finish: black paint}\n").warnings());
        assertEquals(List.of(), read("").warnings());
    }

    @ParameterizedTest
    @CsvSource({"30 g, mm thick", "80 kg, mm thick"})
    void aSheetLikeNoPanIsNoted(String mass, String words) throws Exception {
        List<String> warnings =
                read("pan: {finish: black paint, mass: " + mass + "}\n").warnings();
        assertEquals(1, warnings.size(), warnings.toString());
        assertTrue(warnings.get(0).startsWith("pan.mass: ") && warnings.get(0).contains(words), warnings.toString());
    }
}
