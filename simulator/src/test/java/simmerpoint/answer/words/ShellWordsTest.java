package simmerpoint.answer.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.setup.SideView;
import simmerpoint.units.UnitSystem;

/** What a builder is told of a shell, against the ends of its rim where the program has them. */
class ShellWordsTest {
    private static final String ANTENNA = "cut: off-axis-shell, width: 75 cm, height: 83 cm, depth: 68 mm";

    private static Scenario scenario(String surface, double sunDegrees) throws Exception {
        String text = "dish: {surface: {" + surface + "}}\nsun: {elevation: " + sunDegrees
                + "°, beam: 800 W/m²}\npan: {diameter: 16 cm}\n";
        return ScenarioReader.parse("t.yaml", text, Path.of(".")).scenario();
    }

    private static ShellWords words(Scenario scenario) {
        return ShellWords.of(scenario, new FigureFormat(UnitSystem.METRIC)).orElseThrow();
    }

    private static double number(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern.replace(" ", "[ \\u00a0]")).matcher(text);
        assertTrue(matcher.find(), text);
        return Double.parseDouble(matcher.group(1));
    }

    /** The board from the lower to the upper end, the axis along z: both ways about. */
    @ParameterizedTest
    @CsvSource({"down, lower, upper", "up, upper, lower"})
    void theStickOnItsWedgePointsAlongTheAxis(String nearEnd, String near, String far) throws Exception {
        Scenario scenario = scenario(ANTENNA + ", near-end: " + nearEnd, 50);
        DishPlan dish = scenario.dish();
        Vec lower = dish.onMirror(-dish.lowerEdgeMetres(), 0);
        Vec upper = dish.onMirror(dish.upperEdgeMetres(), 0);
        Vec board = upper.minus(lower);
        double leans = Math.asin(board.z() / board.length());
        String said = words(scenario).stick();
        assertEquals(Math.toDegrees(Math.abs(leans)), number(said, "it leans ([0-9.]+)° from square"), 0.051);
        assertTrue(said.contains("towards the " + (leans > 0 ? "upper" : "lower") + " end"), said);
        assertTrue(said.contains("towards the " + far + " end"), said);
        // The wedge levels the board across the axis: it lifts the end that lies deeper along z.
        assertTrue(said.contains("high at its " + (board.z() > 0 ? "lower" : "upper") + " end"), said);
        assertTrue(said.contains("high at its " + near + " end"), said);
        double wedge = number(said, "a wedge 20 cm long and ([0-9.]+) cm high");
        assertEquals(20 * Math.abs(board.z() / board.x()), wedge, 0.06);
    }

    /** Which way the open side looks, by projecting the rim onto the upright plane through the sun. */
    @ParameterizedTest
    @CsvSource({"down, 50", "down, 15", "up, 50", "up, 80"})
    void theRimIsTippedTheRightWay(String nearEnd, double sun) throws Exception {
        Scenario scenario = scenario(ANTENNA + ", near-end: " + nearEnd, sun);
        DishPlan dish = scenario.dish();
        SideView view = new SideView(Math.toRadians(sun), dish.mount(0), 1);
        SideView.Place lower = view.of(dish.onMirror(-dish.lowerEdgeMetres(), 0));
        SideView.Place upper = view.of(dish.onMirror(dish.upperEdgeMetres(), 0));
        // Square to the rim, turned from "up along the rim" towards the sun.
        double looks = Math.toDegrees(Math.atan2(
                -(upper.towardsSunMetres() - lower.towardsSunMetres()), upper.heightMetres() - lower.heightMetres()));
        String said = words(scenario).facing();
        assertTrue(said.contains(looks < sun ? "° below facing the sun" : "° above facing the sun"), said);
        String where = looks > 90
                ? "straight up and " + Math.round(looks - 90) + "° beyond"
                : Math.round(Math.abs(looks)) + (looks < 0 ? "° below level" : "° above level");
        assertTrue(said.contains(where) || said.contains(String.format("%.1f", Math.abs(looks))), said + " " + looks);
    }

    /** f = W³/16hH: 1 mm more depth, worked out anew. */
    @Test
    void whatAMillimetreOfDepthDoes() throws Exception {
        String said = words(scenario(ANTENNA, 50)).tapeDoubt();
        double f = Math.pow(0.75, 3) / (16 * 0.83);
        assertEquals(1000 * (f / 0.068 - f / 0.069), number(said, "moves the focus by ([0-9]+) mm"), 0.5);
        assertTrue(said.contains("each ± is for a tape read to ±"), said);
        String better = words(scenario(ANTENNA + " ± 1 mm", 50)).tapeDoubt();
        assertTrue(better.replace('\u00a0', ' ').contains("a height to ± 2 mm and a depth to ± 1 mm"), better);
    }

    @Test
    void aRoundDishIsToldAsOne() throws Exception {
        ShellWords round = words(scenario("cut: off-axis-shell, width: 83 cm, height: 83 cm, depth: 68 mm", 50));
        assertFalse(round.leans());
        assertTrue(round.strings().contains("width equals height"), round.strings());
        assertTrue(words(scenario(ANTENNA, 50)).leans());
    }
}
