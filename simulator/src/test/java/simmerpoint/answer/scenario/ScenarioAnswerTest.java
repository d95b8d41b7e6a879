package simmerpoint.answer.scenario;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.FromFile;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.cut.Tiles;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.report.SampleResults;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.units.UnitSystem;

class ScenarioAnswerTest {
    static Stream<Arguments> cuts() {
        Mesh mesh = new Mesh(
                "dish.obj", new double[] {0, 0, 0, 0.6, 0, 0.1, 0, 0.6, 0.1}, new int[] {0, 1, 2}, new int[] {0, 3});
        return Stream.of(
                Arguments.of(new FlatRings(24, 6, RingSpacing.EQUAL_WIDTH), "flat panels, 24 sectors in 6 rings"),
                Arguments.of(new FlatRings(24, 1, RingSpacing.EQUAL_WIDTH), "24 sectors in 1 ring, at the rim "),
                Arguments.of(new BentStrips(16), "16 strips bent along the ribs"),
                Arguments.of(Tiles.square(0.05), "square tiles of 5 cm"),
                Arguments.of(Tiles.hexagon(0.05), "hexagon tiles of 5 cm across their flats"),
                Arguments.of(new Smooth(), "smooth, not cut"),
                Arguments.of(new FromFile(mesh), "1 flat panel from dish.obj"));
    }

    private static String answer(Cut cut, UnitSystem system, Scenario of) {
        Scenario scenario = new Scenario(
                of.title(),
                new DishPlan(1.2, 0.81, 0.06, 0, cut),
                Mirror.plain(0.85, 0.005),
                of.sun(),
                of.aim(),
                of.target(),
                of.stand());
        return ScenarioAnswer.of(scenario, system).toString().replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void everyCutIsNamed(Cut cut, String words) {
        String text = answer(cut, UnitSystem.METRIC, SampleResults.tight().scenario());
        assertTrue(text.contains(words), text);
        // Depth of a paraboloid, r²/4f: 0.6² / 3.24 = 0.1111 m.
        assertTrue(text.contains("120 cm across, focal length 81 cm, 11.1 cm deep"), text);
        assertTrue(text.contains("pan 24 cm across, 11 cm high, black enamel (takes up 92 %)"), text);
    }

    private static String read(String text, UnitSystem system) throws ScenarioException {
        Scenario scenario = ScenarioReader.parse("t.yaml", text, Path.of("")).scenario();
        return ScenarioAnswer.of(scenario, system).toString().replace('\u00a0', ' ');
    }

    /** At 1500 m water boils at 95.0 °C or 203 °F: standard atmosphere (ISO 2533) and steam tables. */
    @Test
    void pansPlacesAndSkiesAreToldInBothUnits() throws Exception {
        String text = "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\n"
                + "place: {latitude: 33.5° S, longitude: 70.25° W, altitude: 1500 m, zone: UTC-4}\n"
                + "when: {date: 2026-12-21, time: 10:00}\n"
                + "pan: {material: cast iron, mass: 4.2 kg, water: 3 l, lid: off, lid-finish: white enamel}\n"
                + "air: {temperature: 25 °C, wind: 2 m/s}\n";
        String metric = read(text, UnitSystem.METRIC);
        for (String words : List.of(
                "33.50° S, 70.25° W, 1500 m above the sea, clock of UTC-04:00",
                "2026-12-21 10:00, sun and beam as then",
                "usual Linke turbidity of the place and the month",
                "cast iron, 4.2 kg, lid off; takes up 93 % at the underside, 93 % at the wall, ",
                "3 l at 20 °C, boils at 95",
                "25 °C, wind 2 m/s, humidity 50 %, 1500 m above the sea, under the open sky",
                "keep warm from 60 °C, simmer from 89",
                "boil from 6 kg/(h·m²) of steam, fast boil from 20 kg/(h·m²)",
                "mount 60 cm above the ground, cooking from 40 cm to 130 cm")) {
            assertTrue(metric.contains(words), metric);
        }
        String inch = read(text, UnitSystem.INCH);
        for (String words : List.of(
                "4921 ft above the sea", "9.3 lb, lid off", "3.2 qt at 68 °F, boils at 203 °F", "wind 4.5 mph")) {
            assertTrue(inch.contains(words), inch);
        }
    }

    /** Outermost panel of a 1.2 m dish in 24 sectors: 1.2 m x sin 7.5 degrees = 15.66 cm at the rim, less the gap. */
    @Test
    void panelsAimAndMovesAreTold() throws Exception {
        String text = read(
                "dish: {diameter: 1.2 m, focal-length: 0.8 m, gap: 2 mm,"
                        + " surface: {cut: flat-rings, sectors: 24, rings: 6}}\n"
                        + "mirror: {wide-share: 5 %, wide-spread: 20 mrad, beam-spread: 1 mrad}\n"
                        + "aim: {turn: {up: -0.5°}, drift: {side: 2°}, jitter: 2 mrad, mount: -5 cm, pan-carried-by: dish}\n"
                        + "stand: {pull-back: 3 cm, slide: -2 cm, raise: 1 cm, side: 4 mm}\n",
                UnitSystem.METRIC);
        for (String words : List.of(
                "144 flat panels, 24 sectors in 6 rings, at the rim 15.5 cm wide",
                "beam spread 1.0 mrad, but 5.0 % of the beam spread by 20 mrad",
                "points 0.5° too low, the sun has drifted 2° to the right, shakes by 2.0 mrad, turns about a point 5 cm"
                        + " before its middle, pan carried by the dish",
                "off the focus: pull-back 3 cm, slide \u22122 cm, raise 1 cm, side 4 mm")) {
            assertTrue(text.contains(words), text);
        }
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void inchesAndTheBareDiscToo(Cut cut, String words) {
        String text = answer(cut, UnitSystem.INCH, SampleResults.disc().scenario());
        assertTrue(text.contains("47 1/4 in across, focal length 32 in"), text);
        assertTrue(text.contains("bare disc 7 7/8 in across, leaning 0°"), text);
    }
}
