package simmerpoint.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.units.UnitSystem;

/** Angles, masses and allowances of what is built. */
class StructureTest {
    private static CutPlan plan(String text) throws Exception {
        return CutPlan.of(ScenarioReader.parse("test", text, Path.of("")), UnitSystem.METRIC);
    }

    private static String dish(String surface) {
        return "dish: {diameter: 1200 mm, focal-length: 500 mm, hub: 100 mm, surface: {" + surface + "}}\n";
    }

    /** Panels of one ring, all at the slope s, stand at 2·asin(sin s · sin π/n) to each other (derived here, two ways). */
    @ParameterizedTest
    @CsvSource({"8", "12", "24"})
    void edgesOfOneRingAreBevelledByHalfTheirAngle(int sectors) throws Exception {
        CutPlan plan = plan(dish("cut: flat-rings, sectors: " + sectors + ", rings: 2")
                + "build: {sheet-width: 2 m, sheet-length: 2 m, film-width: 2 m}\n");
        List<EdgeBevel> bevels = plan.bevels();
        assertEquals(2, bevels.size());
        for (EdgeBevel bevel : bevels) {
            double slope = plan.places().stream()
                    .filter(place -> place.piece().equals(bevel.piece()))
                    .findFirst()
                    .orElseThrow()
                    .cantRadians();
            double wanted = Math.asin(Math.sin(slope) * Math.sin(Math.PI / sectors));
            assertEquals(wanted, bevel.sides().orElseThrow(), 1e-9);
        }
        assertEquals(
                bevels.get(0).outwards().orElseThrow(), bevels.get(1).inwards().orElseThrow(), 1e-9);
        double slopes =
                plan.places().get(1).cantRadians() - plan.places().get(0).cantRadians();
        assertEquals(slopes / 2, bevels.get(0).outwards().orElseThrow(), 1e-9);
        assertTrue(bevels.get(0).inwards().isEmpty() && bevels.get(1).outwards().isEmpty());
    }

    /** The figures of the formula: 30° and 12 sectors are 14.8709° apart, 24 sectors 7.4839°. */
    @Test
    void theFormulaIsThatOfTheTrade() {
        assertEquals(14.8709, Math.toDegrees(2 * Math.asin(0.5 * Math.sin(Math.PI / 12))), 1e-4);
        assertEquals(7.4839, Math.toDegrees(2 * Math.asin(0.5 * Math.sin(Math.PI / 24))), 1e-4);
    }

    /**
     * Middle of an even shell on the paraboloid, z = r²/4f, dA = 2πr√(1 + r²/4f²)dr, by Simpson's rule. Ribs as thin as card weigh next
     * to nothing.
     */
    @Test
    void theMiddleOfManyStripsIsThatOfAShell() throws Exception {
        CutPlan plan = plan(dish("cut: bent-strips, sectors: 60")
                + "build: {rib-thickness: 0.5 mm, rib-material: foam board, panel-material: steel}\n");
        int n = 1000;
        double area = 0;
        double moment = 0;
        for (int k = 0; k <= n; k++) {
            double r = 0.05 + 0.55 * k / n;
            double weight = (k == 0 || k == n ? 1 : k % 2 == 1 ? 4 : 2) * r * Math.hypot(1, r);
            area += weight;
            moment += weight * r * r / 2;
        }
        assertEquals(moment / area, plan.mountLoad().centreHeight(), 5e-4);
        assertTrue(plan.ribMass() < 0.01 * plan.mass());
    }

    /** A rectangle's middle is half its height up; a triangle's a third (any text on statics). */
    @Test
    void middlesOfPlaneFigures() {
        Polygon square = new Polygon(List.of(at(0, -1), at(3, -1), at(3, 2), at(0, 2)));
        Polygon triangle = new Polygon(List.of(at(0, 0), at(3, 0), at(0, 3)));
        assertEquals(0.5, square.centroid().y(), 1e-12);
        assertEquals(1, triangle.centroid().y(), 1e-12);
    }

    private static Point at(double x, double y) {
        return new Point(x, y);
    }

    /** The weight's pull by hand: m·g·(mount behind + middle). */
    @Test
    void theMountHoldsTwiceWeightAndWind() throws Exception {
        CutPlan plan = plan(dish("cut: bent-strips, sectors: 24") + "aim: {mount: 10 cm}\n");
        MountLoad load = plan.mountLoad();
        assertEquals(plan.mass() * 9.80665 * (0.1 + load.centreHeight()), load.weightMoment(), 1e-9);
        // ¼·½ρv²·A·D at 8 m/s: 0.25 · 39.2 Pa · 1.13097 m² · 1.2 m.
        assertEquals(0.25 * 39.2 * 1.13097 * 1.2, load.windMoment(), 1e-3);
        assertEquals(2 * (load.weightMoment() + load.windMoment()), load.wantedMoment(), 1e-9);
    }

    @Test
    void panelsReachOverTheirNeighboursAndFilmDoesNot() throws Exception {
        String tiles = "dish: {diameter: 60 cm, focal-length: 50 cm, surface: {cut: square-tiles, tile: 50 mm}}\n";
        CutPlan plan = plan(tiles + "build: {panel-overlap: 4 mm}\n");
        assertEquals(0.058, plan.panels().get(0).outline().width(), 1e-9);
        assertEquals(0.050, plan.films().get(0).outline().width(), 1e-9);
    }

    @Test
    void aSecondNotchTakesItsOwnPlace() throws Exception {
        String two = "build: {notch-at: 300 mm, second-notch-at: 450 mm}\n";
        double whole = plan(dish("cut: bent-strips, sectors: 24"))
                .rib()
                .orElseThrow()
                .outline()
                .area();
        double cut = plan(dish("cut: bent-strips, sectors: 24") + two)
                .rib()
                .orElseThrow()
                .outline()
                .area();
        assertEquals(2 * 0.006 * 0.020, whole - cut, 1e-12);
        String same = two.replace("450 mm", "303 mm");
        CuttingException e =
                assertThrows(CuttingException.class, () -> plan(dish("cut: bent-strips, sectors: 24") + same));
        assertTrue(e.getMessage().contains("move them apart"), e.getMessage());
    }

    /** Pieces lie as the grain asks, in lengths side by side where they do not fit so. */
    @Test
    void filmLiesAsItsGrainAsks() throws Exception {
        String strips = dish("cut: bent-strips, sectors: 24");
        for (String grain : List.of("along", "across")) {
            CutPlan plan = plan(strips + "build: {film-width: 70 cm, film-length: 3 m, film-grain: " + grain + "}\n");
            plan.filmSheets().sheets().stream()
                    .flatMap(sheet -> sheet.placed().stream())
                    .forEach(placed -> assertEquals(
                            grain.equals("along"),
                            placed.outline().height() > placed.outline().width()));
        }
        CutPlan narrow = plan(strips + "build: {film-width: 40 cm, film-grain: across}\n");
        assertTrue(narrow.filmLengths().get(0).lengths().size() > 1);
        narrow.filmSheets().sheets().stream()
                .flatMap(sheet -> sheet.placed().stream())
                .forEach(placed -> assertTrue(placed.outline().width() <= 0.4 + 1e-9));
    }
}
