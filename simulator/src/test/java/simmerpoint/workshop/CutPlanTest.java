package simmerpoint.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.Parabola;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Polygon;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.units.UnitSystem;

/** What is cut against closed forms and against the geometry that is traced. */
class CutPlanTest {
    private static final String STRIPS =
            "dish: {diameter: 1200 mm, focal-length: 500 mm, hub: 200 mm, surface: {cut: bent-strips, "
                    + "sectors: 16}}\n";
    private static final String RINGS =
            "dish: {diameter: 1200 mm, focal-length: 800 mm, hub: 60 mm, surface: {cut: flat-rings, "
                    + "sectors: 24, rings: 6}}\n";
    private static final String TILES =
            "dish: {diameter: 1 m, focal-length: 50 cm, surface: {cut: hexagon-tiles, tile: 100 mm}}\n";

    private static final String CROSS = ", through-ribs: 2}\n";

    static CutPlan plan(String text) throws Exception {
        return CutPlan.of(ScenarioReader.parse("test", text, Path.of("")), UnitSystem.METRIC);
    }

    /** Arc and depth of half a parabola, by ½r√(1 + t²) + f·asinh t with t = r/2f and r²/4f; derived here, mm. */
    @ParameterizedTest
    @CsvSource({
        "1200, 500, 634.270, 180.000",
        "900, 450, 468.103, 112.500",
        "1200, 800, 613.780, 112.500",
        "914.4, 914.4, 461.919, 57.150",
        "1800, 670, 963.695, 302.239"
    })
    void ribsAreAsLongAndAsDeepAsTheParabola(double across, double focal, double arc, double depth) throws Exception {
        RibShape rib = plan("dish: {diameter: " + across + " mm, focal-length: " + focal
                        + " mm, surface: {cut: bent-strips, sectors: 12}}\nbuild: {sheet-width: 200 cm, sheet-length: 300 cm, "
                        + "film-width: 3 m}\n")
                .rib()
                .orElseThrow();
        assertEquals(arc, 1000 * rib.arc(), 1e-3);
        assertEquals(depth, 1000 * rib.depth(), 1e-3);
    }

    /** Under a square rim a rib ends w/2 ÷ max(|cos|, |sin|) from the axis, at the circle or at a slot (plane geometry). */
    @Test
    void ribsEndWhereTheRimCutsThem() throws Exception {
        CutPlan plan =
                plan("dish: {diameter: 1200 mm, focal-length: 500 mm, hub: 200 mm, rim: {shape: square, width: 900 mm, "
                        + "slot-width: 60 mm, slot-length: 150 mm}, surface: {cut: bent-strips, sectors: 16}}\n");
        List<Double> ends = plan.rib().orElseThrow().ribs().ends();
        for (int k = 0; k < 16; k++) {
            double angle = 2 * Math.PI * k / 16;
            double side = 0.45 / Math.max(Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle)));
            assertEquals(k == 8 ? 0.45 - 0.15 : Math.min(0.6, side), ends.get(k), 1e-5, "rib " + (k + 1));
        }
        List<Piece> ribs = plan.pieces().stream()
                .filter(piece -> piece.use() == Piece.Use.RIB)
                .toList();
        assertEquals(
                List.of("rib A", "rib B", "rib C", "rib D"),
                ribs.stream().map(Piece::name).toList());
        assertEquals(List.of(4, 8, 3, 1), ribs.stream().map(Piece::count).toList());
        double inner = plan.rib().orElseThrow().innerEnd();
        assertEquals(0.45 - inner, ribs.get(2).outline().width(), 1e-4);
    }

    /**
     * Under a square rim depths are counted from the corners, 40 cm·√2 from the axis; opposite tips are twice a rib apart, and a corner's
     * tip is half a side from that of its neighbour and higher (plane geometry).
     */
    @Test
    void aSquareIsCheckedFromItsOwnTips() throws Exception {
        BuildCheck check =
                plan("dish: {diameter: 1200 mm, focal-length: 500 mm, hub: 200 mm, rim: {shape: square, width: 800 mm}, "
                                + "surface: {cut: bent-strips, sectors: 8}}\n")
                        .check()
                        .orElseThrow();
        double corner = 0.4 * Math.sqrt(2);
        assertEquals(
                List.of("A", "B"),
                check.across().stream().map(BuildCheck.Across::rib).toList());
        assertEquals(2 * corner, check.across().get(0).metres(), 2e-4);
        assertEquals(
                List.of(List.of(2, 6), List.of(4, 8)), check.across().get(0).pairs());
        assertEquals(0.8, check.across().get(1).metres(), 2e-4);
        assertEquals(1, check.betweenTips().size());
        double up = (corner * corner - 0.16) / 2;
        assertEquals(Math.hypot(0.4, up), check.betweenTips().get(0).metres(), 1e-5);
        assertTrue(check.acrossLongest());
        BuildCheck.Depth first = check.depths().get(0);
        assertEquals((corner * corner - first.radius() * first.radius()) / 2, first.depth(), 1e-5);
    }

    /** Of a half dish no rib has one as long opposite it unless two lie along its straight edge. */
    @ParameterizedTest
    @CsvSource({"16, true", "14, false"})
    void aHalfIsCheckedAlongItsStraightEdge(int sectors, boolean along) throws Exception {
        BuildCheck check =
                plan("dish: {diameter: 1200 mm, focal-length: 500 mm, hub: 200 mm, rim: {half: upper}, surface: "
                                + "{cut: bent-strips, sectors: " + sectors + "}}\n")
                        .check()
                        .orElseThrow();
        assertEquals(along, check.acrossLongest());
        assertEquals(
                along ? List.of(List.of(List.of(5, 13))) : List.of(),
                check.across().stream().map(BuildCheck.Across::pairs).toList());
    }

    /** Film of two materials is two orders, each with its name on its pieces. */
    @Test
    void filmIsBoughtByMaterial() throws Exception {
        CutPlan plan = plan(
                "dish: {diameter: 1 m, focal-length: 40 cm, hub: 6 cm, surface: {cut: bent-strips, sectors: 12}, "
                        + "zones: {middle: {outer-diameter: 70 cm}, rim: {inner-diameter: 70 cm, surface: {cut: square-tiles, tile: 60 mm}, "
                        + "mirror: {material: silvered polymer film}}}}\nmirror: {material: aluminised polyester film}\n");
        assertEquals(
                List.of("aluminised polyester film", "silvered polymer film"),
                List.copyOf(plan.filmByMaterial().keySet()));
        assertEquals(
                plan.filmSheets().sheets().size(),
                plan.filmByMaterial().values().stream()
                        .mapToInt(layout -> layout.sheets().size())
                        .sum());
        assertTrue(plan.films().stream()
                .allMatch(film -> film.name().startsWith("silvered polymer film for rim")
                        || film.name().startsWith("aluminised polyester film for middle")));
    }

    /** A half dish stands on the ribs of that half and on the two along its straight edge. */
    @Test
    void halfADishHasHalfTheRibs() throws Exception {
        CutPlan plan = plan("dish: {diameter: 1200 mm, focal-length: 500 mm, hub: 200 mm, rim: {half: upper}, surface: "
                + "{cut: bent-strips, sectors: 16}}\n");
        RibShape rib = plan.rib().orElseThrow();
        assertEquals(9, rib.standing());
        assertEquals(List.of(1, 2, 3, 4, 5, 13, 14, 15, 16), rib.ofLength(0.6));
    }

    /** The pencil is as far from the pin as from the bar's directrix: (f + z) + (H − z) = f + H, derived here. */
    @Test
    void theStringIsTheSameAllAlongTheCurve() {
        Parabola parabola = new Parabola(0.5);
        StringRule rule = StringRule.of(parabola, 0.6, UnitSystem.METRIC);
        assertEquals(0.6, rule.bar(), 1e-12);
        assertEquals(1.1, rule.string(), 1e-12);
        for (double r = 0; r <= 0.6; r += 0.1) {
            double z = parabola.height(r);
            assertEquals(rule.string(), Math.hypot(r, rule.focus() - z) + rule.bar() - z, 1e-9);
        }
    }

    /** Bending keeps lengths, so a strip's edge is as long as the rib that it lies on. */
    @Test
    void theEdgeOfALaidStripIsAsLongAsItsRib() throws Exception {
        CutPlan plan = plan(STRIPS);
        Polygon strip = plan.panels().get(0).outline();
        double longest = longEdge(strip);
        Parabola parabola = new Parabola(0.5);
        assertEquals(parabola.arcLength(0.6) - parabola.arcLength(0.1), longest, 1e-5);
        assertEquals(16, plan.panels().get(0).count());
        assertEquals(2 * 0.6 * Math.sin(Math.PI / 16), widest(strip), 1e-9);
    }

    /** Half of what is left of the way round when both ends are taken off. */
    private static double longEdge(Polygon strip) {
        double ends = 2 * (0.6 + 0.1) * Math.sin(Math.PI / 16);
        return (IntStream.range(0, strip.size()).mapToDouble(strip::edge).sum() - ends) / 2;
    }

    private static double widest(Polygon strip) {
        return IntStream.range(0, strip.size()).mapToDouble(strip::edge).max().orElseThrow();
    }

    /** The strip as it stands, wide(x) by √(1 + slope²) summed over the plan, by Simpson's rule. */
    @Test
    void theAreaOfAStripIsThatOfTheBentOne() throws Exception {
        double beta = Math.PI / 16;
        double focus = 0.5 * Math.cos(beta) * Math.cos(beta);
        double from = 0.1 * Math.cos(beta);
        double to = 0.6 * Math.cos(beta);
        int n = 1000;
        double sum = 0;
        for (int k = 0; k <= n; k++) {
            double x = from + (to - from) * k / n;
            double weight = k == 0 || k == n ? 1 : k % 2 == 1 ? 4 : 2;
            sum += weight * 2 * x * Math.tan(beta) * Math.hypot(1, x / (2 * focus));
        }
        double area = sum * (to - from) / n / 3;
        assertEquals(area, plan(STRIPS).panels().get(0).outline().area(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource({"rings, 6", "tiles, 1"})
    void flatPanelsAreAsLargeAsThoseThatAreTraced(String which, int shapes) throws Exception {
        CutPlan plan = plan(which.equals("rings") ? RINGS : TILES);
        DishPlan dish = plan.scenario().dish();
        double traced = dish.outlines().stream().mapToDouble(CutPlanTest::area).sum();
        double cut = plan.panels().stream().mapToDouble(Piece::totalArea).sum();
        assertEquals(traced, cut, 1e-9);
        assertEquals(
                dish.outlines().size(),
                plan.panels().stream().mapToInt(Piece::count).sum());
        assertEquals(shapes, plan.panels().size());
        double projected =
                dish.outlines().stream().mapToDouble(CutPlanTest::planArea).sum();
        assertEquals(dish.surface(Direction.Z).apertureArea(), projected, 1e-9);
    }

    /**
     * Tiles cut at the rim fill it: what is bare is slits and slivers below a tenth of a tile. What is cut is what is traced, to the
     * chords of its arcs: steps of 5 mm lack (5 mm)²/12R² of each arc's strip.
     */
    @Test
    void tilesCutAtTheRimAreThoseThatAreTraced() throws Exception {
        CutPlan plan = plan(TILES.replace("100 mm", "100 mm, at-rim: cut"));
        DishPlan dish = plan.scenario().dish();
        double traced = dish.surface(Direction.Z).apertureArea();
        double projected =
                dish.outlines().stream().mapToDouble(CutPlanTest::planArea).sum();
        assertEquals(traced, projected, 1e-5);
        double cut = plan.panels().stream().mapToDouble(Piece::totalArea).sum();
        assertEquals(dish.outlines().stream().mapToDouble(CutPlanTest::area).sum(), cut, 1e-8);
        double left = plan(TILES).scenario().dish().surface(Direction.Z).apertureArea();
        assertTrue(left < 0.8 * Math.PI / 4 && traced > 0.9 * Math.PI / 4, left + " and " + traced);
        assertTrue(plan.panels().size() > 1 && plan.panels().get(0).count() > 40, "whole tiles are one piece");
    }

    private static double area(PanelOutline panel) {
        return sum(panel).length() / 2;
    }

    private static double planArea(PanelOutline panel) {
        return sum(panel).z() / 2;
    }

    private static Vec sum(PanelOutline panel) {
        List<Vec> edge = panel.edge();
        Vec sum = Vec.ZERO;
        for (int k = 0; k < edge.size(); k++) {
            sum = sum.plus(edge.get(k).cross(edge.get((k + 1) % edge.size())));
        }
        return sum;
    }

    /** Ribs that meet side by side leave no room for less: their thicknesses are chords of the circle there. */
    @Test
    void ribsMeetSideBySide() throws Exception {
        RibShape rib = plan(STRIPS + "build: {rib-thickness: 10 mm}\n").rib().orElseThrow();
        assertEquals(0.005 / Math.tan(Math.PI / 16), rib.innerEnd(), 1e-12);
        assertEquals(0.010, 2 * rib.innerEnd() * Math.tan(Math.PI / 16), 1e-12);
    }

    /** A regular polygon of n corners is 2R from corner to corner if n is even, R(1 + cos π/n) from corner to edge if it is odd. */
    @ParameterizedTest
    @CsvSource({"16, 1.2", "9, 1.163816"})
    void lengthsToCheckAreThoseOfARegularPolygon(int sectors, double across) throws Exception {
        BuildCheck check = plan(STRIPS.replace("sectors: 16", "sectors: " + sectors))
                .check()
                .orElseThrow();
        assertEquals(across, check.across().get(0).metres(), 1e-6);
        assertEquals(
                1.2 * Math.sin(Math.PI / sectors), check.betweenTips().get(0).metres(), 1e-12);
        assertEquals(0.18 - 0.005, check.depths().get(0).depth(), 1e-12);
    }

    /** The tangent plane of a paraboloid leans by atan(r/2f) at r (its derivative). */
    @Test
    void tilesLeanAsTheParaboloidDoes() throws Exception {
        for (PanelPlace place : plan(TILES).places()) {
            double r = Math.hypot(place.middle().x(), place.middle().y());
            assertEquals(Math.atan(r / (2 * 0.5)), place.cantRadians(), 1e-6);
        }
    }

    /** A notch takes its width times its depth. */
    @Test
    void aNotchIsCutOutOfTheFoot() throws Exception {
        String notch = "build: {notch-at: 300 mm, notch-width: 6 mm, notch-depth: 20 mm}\n";
        double whole = plan(STRIPS).rib().orElseThrow().outline().area();
        double cut = plan(STRIPS + notch).rib().orElseThrow().outline().area();
        assertEquals(0.006 * 0.020, whole - cut, 1e-12);
        CuttingException e = assertThrows(CuttingException.class, () -> plan(STRIPS + notch.replace("20 mm", "90 mm")));
        assertTrue(e.getMessage().contains("cuts the rib in two"), e.getMessage());
    }

    /** Two slabs that cross, cut with the JDK's areas: a slot square to one of them must be as wide as the other's passage. */
    @ParameterizedTest
    @CsvSource({"16, 90", "10, 72", "6, 60"})
    void aHalfLapHoldsTheOtherRib(int sectors, double degrees) throws Exception {
        ThroughRibs cross = plan(STRIPS.replace("sectors: 16", "sectors: " + sectors) + "build: {through-ribs: 2}\n")
                .throughRibs()
                .orElseThrow();
        assertEquals(degrees, Math.toDegrees(cross.angle()), 1e-9);
        Area both = slab(0);
        both.intersect(slab(Math.toRadians(degrees)));
        assertEquals(both.getBounds2D().getWidth(), 1000 * cross.slotWidth(), 1e-9);
        assertEquals(0.020, cross.slotDepth(), 1e-12);
    }

    /** 6 mm thick, lying along x and then turned, mm. */
    private static Area slab(double radians) {
        Rectangle2D level = new Rectangle2D.Double(-500, -3, 1000, 6);
        return new Area(AffineTransform.getRotateInstance(radians).createTransformedShape(level));
    }

    /**
     * Area below a parabola: 2(bR + R³/12f), less the slot wd, and above it w³/48f more (integrals of r²/4f). The outline's chords of 4 mm
     * lie above the hollow curve and add s³/24f each, 1.6 mm² in all.
     */
    @Test
    void ribsThatCrossHaveTheirAreas() throws Exception {
        CutPlan plan = plan(STRIPS + "build: {through-ribs: 2, below-curve: 50 mm, sheet-length: 2 m}\n");
        double whole = 2 * (0.05 * 0.6 + Math.pow(0.6, 3) / (12 * 0.5));
        double slot = 0.006 * 0.025;
        assertEquals(
                List.of(12, 1, 1),
                plan.pieces().stream().limit(3).map(Piece::count).toList());
        Polygon above = plan.pieces().get(1).outline();
        Polygon below = plan.pieces().get(2).outline();
        assertEquals(whole - slot - Math.pow(0.006, 3) / (48 * 0.5), above.area(), 2e-6);
        assertEquals(whole - slot, below.area(), 2e-6);
        assertEquals(1.2, above.width(), 1e-12);
        assertTrue(above.contains(0.6, 0.0249) && !above.contains(0.6, 0.0251), "the lower half is left");
        assertTrue(!below.contains(0.6, 0.0249) && below.contains(0.6, 0.0251), "the upper half is left");
    }

    /**
     * Two ribs with their curves facing each other: their heights add up to most at the ends, since both curves are hollow, so a pair
     * takes twice the stock below the curve and the curve's heights at both ends (plane geometry), and one gap.
     */
    @Test
    void ribsLieInPairsCurveToCurve() throws Exception {
        CutPlan plan =
                plan("dish: {diameter: 1200 mm, focal-length: 800 mm, surface: {cut: bent-strips, sectors: 24}}\n");
        RibShape rib = plan.rib().orElseThrow();
        double pair = 2 * 0.040 + rib.height(0.6) + rib.height(rib.innerEnd()) + 0.003;
        List<Polygon> placed = plan.ribSheets().sheets().get(0).placed().stream()
                .map(SheetLayout.Placed::outline)
                .toList();
        assertEquals(12, placed.size());
        double low = Math.min(placed.get(0).left(), placed.get(1).left());
        double high = Math.max(right(placed.get(0)), right(placed.get(1)));
        double foot = Math.min(placed.get(0).foot(), placed.get(1).foot());
        double top = Math.max(top(placed.get(0)), top(placed.get(1)));
        assertEquals(pair, Math.min(high - low, top - foot), 1e-9);
        assertTrue(
                plan.ribSheets().usedShare() > 0.75, "used: " + plan.ribSheets().usedShare());
    }

    private static double right(Polygon piece) {
        return piece.left() + piece.width();
    }

    private static double top(Polygon piece) {
        return piece.foot() + piece.height();
    }

    /** Whole centimetres or half inches, however wide the hub is. */
    @ParameterizedTest
    @CsvSource({"METRIC, 0.01", "INCH, 0.0127"})
    void depthsAreMeasuredAtRoundDistances(UnitSystem units, double step) throws Exception {
        BuildCheck check = CutPlan.of(
                        ScenarioReader.parse("test", STRIPS.replace("hub: 200 mm", "hub: 77 mm"), Path.of("")), units)
                .check()
                .orElseThrow();
        assertEquals(6, check.depths().size());
        assertTrue(check.depths().get(0).radius() >= 0.0385);
        for (BuildCheck.Depth depth : check.depths()) {
            assertEquals(Math.rint(depth.radius() / step), depth.radius() / step, 1e-9);
            assertEquals(0.18 - depth.radius() * depth.radius() / 2, depth.depth(), 1e-12);
        }
    }

    /** A builder who measures in inches buys other sheets, unless the scenario names its own. */
    @Test
    void sheetsAreOfUsualSizes() throws Exception {
        assertEquals(new CuttingStock.Size(0.6, 1.2), plan(STRIPS).stock().sheet());
        CuttingStock inch = CutPlan.of(ScenarioReader.parse("test", STRIPS, Path.of("")), UnitSystem.INCH)
                .stock();
        assertEquals(new CuttingStock.Size(24 * 0.0254, 48 * 0.0254), inch.sheet());
        CuttingStock own = CutPlan.of(
                        ScenarioReader.parse("test", STRIPS + "build: {sheet-width: 70 cm}\n", Path.of("")),
                        UnitSystem.INCH)
                .stock();
        assertEquals(new CuttingStock.Size(0.7, 48 * 0.0254), own.sheet());
    }

    @Test
    void piecesKeepClearOfEachOtherAndOfTheSheetsEdge() throws Exception {
        for (String text : List.of(STRIPS, RINGS, TILES, RINGS + CROSS)) {
            String build = "build: {spacing: 2 mm, film-width: 75 cm" + (text.endsWith(CROSS) ? "" : "}\n");
            CutPlan plan = plan(text.replace(CROSS, "") + build + (text.endsWith(CROSS) ? CROSS : ""));
            for (SheetLayout layout : List.of(plan.ribSheets(), plan.panelSheets(), plan.filmSheets())) {
                layout.sheets().forEach(sheet -> clear(sheet, layout.sheet()));
            }
            assertEquals(
                    plan.panels().stream().mapToInt(Piece::count).sum(),
                    plan.panelSheets().sheets().stream()
                            .mapToInt(sheet -> sheet.placed().size())
                            .sum());
        }
    }

    private static void clear(SheetLayout.Sheet sheet, CuttingStock.Size size) {
        List<Polygon> all =
                sheet.placed().stream().map(SheetLayout.Placed::outline).toList();
        for (int k = 0; k < all.size(); k++) {
            Polygon piece = all.get(k);
            assertTrue(piece.left() > -1e-9 && piece.foot() > -1e-9);
            assertTrue(piece.left() + piece.width() < size.width() + 1e-9);
            assertTrue(piece.foot() + piece.height() < size.length() + 1e-9);
            for (int l = 0; l < k; l++) {
                Area both = area(piece);
                both.intersect(area(all.get(l)));
                assertTrue(both.isEmpty(), "pieces " + k + " and " + l + " overlap");
            }
        }
    }

    /** The JDK's own areas, which know nothing of rows. */
    private static Area area(Polygon polygon) {
        Path2D path = new Path2D.Double();
        polygon.corners().forEach(p -> {
            if (path.getCurrentPoint() == null) {
                path.moveTo(p.x(), p.y());
            } else {
                path.lineTo(p.x(), p.y());
            }
        });
        path.closePath();
        return new Area(path);
    }

    /** Film grows by as much on each edge: a square of 5 cm with 5 mm has 6 cm. */
    @Test
    void filmReachesBeyondItsPanel() throws Exception {
        CutPlan plan = plan("dish: {diameter: 60 cm, focal-length: 50 cm, surface: {cut: square-tiles, tile: 50 mm}}\n"
                + "build: {film-edge: 5 mm}\n");
        Polygon film = plan.films().get(0).outline();
        assertEquals(0.06, film.width(), 1e-9);
        assertEquals(0.06 * 0.06, film.area(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "dish: {diameter: 1 m, focal-length: 50 cm, surface: {cut: smooth}}; has no panels to cut",
                "dish: {diameter: 1 m, focal-length: 50 cm, hub: 5 cm, surface: {cut: bent-strips, sectors: 24}}\\nbuild: "
                        + "{rib-thickness: 20 mm}; meet 76 mm from the middle",
                "dish: {diameter: 4 m, focal-length: 2 m, surface: {cut: bent-strips, sectors: 12}}; is larger than a sheet",
                "dish: {diameter: 1 m, focal-length: 50 cm, surface: {cut: bent-strips, sectors: 9}}\\nbuild: {through-ribs: 1}; take an "
                        + "even number of sectors",
                "dish: {diameter: 1 m, focal-length: 50 cm, surface: {cut: bent-strips, sectors: 8}}\\nbuild: {through-ribs: 2, "
                        + "below-curve: 10 mm}; take at least 12 mm below the curve"
            })
    void whatCannotBeBuiltSaysWhatWouldDo(String text, String words) {
        CuttingException e = assertThrows(CuttingException.class, () -> plan(text.replace("\\n", "\n") + "\n"));
        assertTrue(e.getMessage().replace('\u00a0', ' ').contains(words), e.getMessage());
    }
}
