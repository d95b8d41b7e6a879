package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.drawing.output.XmlWriter;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.units.UnitSystem;

/** The drawings of the dish are to scale: lengths are measured on them and compared with the scenario's. */
class DishDrawingsTest {
    private static final String DISH = "dish: {diameter: 1.2 m, focal-length: 0.8 m, hub: 6 cm, surface: %s}\n";
    private static final String RINGS = "{cut: flat-rings, sectors: 24, rings: 6}";
    private static final Pattern RECTANGLE = Pattern.compile(
            "<rect class=\"([\\w-]+)\" x=\"([0-9.-]+)\" y=\"([0-9.-]+)\" width=\"([0-9.]+)\" height=\"([0-9.]+)\"");

    private static Scenario scenario(String surface, String rest) throws ScenarioException {
        return ScenarioReader.parse("test", DISH.formatted(surface) + rest, Path.of(""))
                .scenario();
    }

    private static String written(HtmlFigure figure) {
        XmlWriter pen = new XmlWriter();
        figure.write(pen);
        return pen.written().replace('\u00a0', ' ');
    }

    private static double[] rectangle(String drawing, String style) {
        Matcher m = RECTANGLE.matcher(drawing);
        while (m.find()) {
            if (m.group(1).equals(style)) {
                return new double[] {
                    Double.parseDouble(m.group(2)),
                    Double.parseDouble(m.group(3)),
                    Double.parseDouble(m.group(4)),
                    Double.parseDouble(m.group(5))
                };
            }
        }
        throw new AssertionError("no " + style + " in " + drawing);
    }

    /** All coordinates of the paths of a style, x and y. */
    private static List<double[]> points(String drawing, String style) {
        List<double[]> points = new ArrayList<>();
        Matcher paths = Pattern.compile("<path class=\"" + style + "[^\"]*\" d=\"([^\"]*)\"")
                .matcher(drawing);
        while (paths.find()) {
            for (String point : paths.group(1).replace("Z", "").split("[ML]")) {
                if (!point.isEmpty()) {
                    String[] xy = point.split(" ");
                    points.add(new double[] {Double.parseDouble(xy[0]), Double.parseDouble(xy[1])});
                }
            }
        }
        return points;
    }

    private static double spread(List<double[]> points, int axis) {
        return points.stream().mapToDouble(p -> p[axis]).max().orElseThrow()
                - points.stream().mapToDouble(p -> p[axis]).min().orElseThrow();
    }

    @Test
    void theFrontIsToScale() throws ScenarioException {
        String front = written(FrontFigure.of(scenario(RINGS, ""), UnitSystem.METRIC));
        double perCentimetre = rectangle(front, "scale-bar")[2] / 20;
        assertTrue(front.contains(">20 cm<"));
        assertEquals(120, spread(points(front, "shade-"), 0) / perCentimetre, 0.1);
        assertEquals(120, spread(points(front, "shade-"), 1) / perCentimetre, 0.1);
        assertTrue(front.contains(">120 cm<"));
        assertEquals(144 * 4, points(front, "shade-").size(), "every panel once");
        // The chord of a 15° sector at the rim, 120 cm · sin 7.5°, and one of six equal steps from 3 to 60 cm on the
        // slope.
        assertTrue(front.contains(">15.7 cm × 10.1 cm<"), front);
    }

    /** Sun 50° high: a level pan 24 cm wide and 11 cm high, its underside 60 + 80·sin 50° = 121.3 cm up (mount at the vertex). */
    @Test
    void theSideIsToScale() throws ScenarioException {
        String side = written(SideFigure.of(
                scenario(RINGS, "sun: {elevation: 50°}\npan: {diameter: 24 cm, height: 11 cm}\naim: {mount: 0 cm}\n"),
                UnitSystem.METRIC));
        double perCentimetre = rectangle(side, "scale-bar")[2] / 20;
        double[] pan = rectangle(side, "target");
        assertEquals(24, pan[2] / perCentimetre, 0.1);
        assertEquals(11, pan[3] / perCentimetre, 0.1);
        double ground = rectangle(side, "ground")[1];
        assertEquals(121.3, (ground - pan[1] - pan[3]) / perCentimetre, 0.1);
        assertTrue(side.contains(">121 cm<"), "to the centimetre, as in the answer");
        assertTrue(side.contains(">60 cm<") && side.contains("focal length 80 cm") && side.contains("sun 50° high"));
        // The section from rim to rim: the chord of 120 cm leans by 90° − 50°.
        assertEquals(120 * Math.sin(Math.toRadians(50)), spread(points(side, "profile"), 0) / perCentimetre, 2);
    }

    /** Every cut and every height of the sun can be drawn, in inches too, without a number that is none. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                RINGS,
                "{cut: bent-strips, sectors: 16}",
                "{cut: square-tiles, tile: 5 cm}",
                "{cut: hexagon-tiles, tile: 3 cm}",
                "{cut: smooth}"
            })
    void everyCutIsDrawn(String surface) throws ScenarioException {
        for (String sun : new String[] {"8°", "45°", "90°"}) {
            for (String target : new String[] {"pan: {diameter: 24 cm}\n", "plane: {disc: 20 cm, lean: 20°}\n"}) {
                Scenario scenario =
                        scenario(surface, "sun: {elevation: " + sun + "}\naim: {turn: {up: 1°}}\n" + target);
                String drawings = written(FrontFigure.of(scenario, UnitSystem.INCH))
                        + written(SideFigure.of(scenario, UnitSystem.INCH));
                assertFalse(drawings.contains("NaN") || drawings.contains("Infinity"), sun);
                assertFalse(drawings.contains(" cm"), sun);
                assertTrue(drawings.length() < 400_000, "no page for a friend holds a drawing of " + drawings.length());
            }
        }
    }

    /** Panels too small to see are not drawn one by one. */
    @Test
    void aDishOfThousandsOfPanelsIsDrawnAsOne() throws ScenarioException {
        String front = written(FrontFigure.of(scenario("{cut: square-tiles, tile: 8 mm}", ""), UnitSystem.METRIC));
        assertTrue(front.contains("panels are too small to be drawn"), front.substring(front.length() - 200));
        assertTrue(front.length() < 20_000);
    }
}
