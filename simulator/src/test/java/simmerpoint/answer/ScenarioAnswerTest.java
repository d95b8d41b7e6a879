package simmerpoint.answer;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Mesh;
import simmerpoint.dish.Mirror;
import simmerpoint.dish.RingSpacing;
import simmerpoint.report.SampleResults;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.UnitSystem;

class ScenarioAnswerTest {
    static Stream<Arguments> cuts() {
        Mesh mesh = new Mesh("dish.obj", new double[9], new int[3], new int[] {0, 3});
        return Stream.of(
                Arguments.of(new Cut.FlatRings(24, 6, RingSpacing.EQUAL_WIDTH), "flat panels, 24 sectors in 6 rings"),
                Arguments.of(new Cut.FlatRings(24, 1, RingSpacing.EQUAL_WIDTH), "24 sectors in 1 ring]"),
                Arguments.of(new Cut.BentStrips(16), "16 strips bent along the ribs"),
                Arguments.of(new Cut.SquareTiles(0.05), "square tiles of 5 cm"),
                Arguments.of(new Cut.HexagonTiles(0.05), "hexagon tiles of 5 cm across their flats"),
                Arguments.of(new Cut.Smooth(), "smooth, not cut"),
                Arguments.of(new Cut.FromFile(mesh), "1 flat panel from dish.obj"));
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

    @ParameterizedTest
    @MethodSource("cuts")
    void inchesAndTheBareDiscToo(Cut cut, String words) {
        String text = answer(cut, UnitSystem.INCH, SampleResults.disc().scenario());
        assertTrue(text.contains("47.2 in across, focal length 31.9 in"), text);
        assertTrue(text.contains("bare disc 7.87 in across, leaning 0°"), text);
    }
}
