package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.SurfaceSamples;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.geometry.Vec;

/** Rims that are not round, against closed forms. */
class ClippedTest {
    private static final double RADIUS = 0.6;
    private static final double F = 0.5;
    private static final int PLACES = 1 << 16;
    private static final PlanRegion ROUND = PlanRegion.circle(RADIUS);

    static Stream<Cut> cuts() {
        return Stream.of(
                new FlatRings(24, 3, RingSpacing.EQUAL_WIDTH),
                new FlatRings(7, 2, RingSpacing.EQUAL_WIDTH),
                new BentStrips(24),
                new Tiles(TileShape.SQUARE, 0.08, Tiles.AtRim.CUT),
                new Tiles(TileShape.HEXAGON, 0.08, Tiles.AtRim.CUT),
                new Smooth());
    }

    private static DishPlan plan(Cut cut, double hub) {
        return new DishPlan(2 * RADIUS, F, hub, cut.has(CutTrait.SEAMS) ? 0.004 : 0, cut);
    }

    private static MirrorSurface surface(Cut cut, double hub, PlanRegion region) {
        return plan(Clipped.of(cut, region), hub).surface(Direction.Z);
    }

    /** Half a circle: area πR²/2 = 0.565487 m², centroid 4R/3π = 0.254648 m from the axis (any text on statics). */
    @Test
    void halfADishHasTheAreaAndTheCentroidOfHalfACircle() {
        MirrorSurface half = surface(new Smooth(), 0, ROUND.between(0, Math.PI));
        assertEquals(0.565487, half.outlineArea(), 5e-7);
        assertEquals(half.outlineArea(), half.apertureArea(), 1e-12);
        MirrorPoints places = SurfaceSamples.places(half, PLACES, 5);
        double area = 0;
        double moment = 0;
        double along = 0;
        for (int i = 0; i < PLACES; i++) {
            double plan = places.area[i] * places.nz[i] / PLACES;
            area += plan;
            moment += plan * places.y[i];
            along += plan * places.x[i];
        }
        // Sampled: an evenly spread sample of 65,536 places is good to some 1e-4; pseudo-random ones would be off by
        // 2e-3 in 4 errors.
        assertEquals(0.565487, area, 4 * 0.565487 / Math.sqrt(PLACES));
        assertEquals(0.254648, moment / area, 2e-3);
        assertEquals(0, along / area, 4e-3);
    }

    /** Closed forms: a square in the circle 2R², one of side s with corners of c cut off s² − 2c², n sides of distance d nd²·tan(π/n). */
    @Test
    void squaresAndPolygonsHaveTheirClosedAreas() {
        double side = RADIUS * Math.sqrt(2);
        PlanRegion square = PlanRegion.regular(RADIUS, 4, side, 0.3);
        assertEquals(2 * RADIUS * RADIUS, surface(new Smooth(), 0, square).apertureArea(), 1e-12);
        PlanRegion cut = PlanRegion.regular(RADIUS, 4, 1, 0)
                .within(PlanRegion.regular(RADIUS, 4, Math.sqrt(2) * 0.7, Math.PI / 4)
                        .corners());
        assertEquals(1 - 2 * 0.09, surface(new Smooth(), 0, cut).apertureArea(), 1e-12);
        for (int n : new int[] {3, 5, 6, 8, 12}) {
            double d = RADIUS * Math.cos(Math.PI / n);
            MirrorSurface polygon = surface(new Smooth(), 0.1, PlanRegion.regular(RADIUS, n, 2 * d, 0.1));
            assertEquals(n * d * d * Math.tan(Math.PI / n), polygon.outlineArea(), 1e-12);
            assertEquals(polygon.outlineArea() - Math.PI * 0.0025, polygon.apertureArea(), 1e-12);
        }
    }

    /** A square of side s over a circle of radius R, R between s/2 and s/√2: four segments R²(φ − sin φ)/2 are lost, φ = 2·acos(s/2R). */
    @Test
    void theDiameterRoundsCornersThatReachBeyondIt() {
        double phi = 2 * Math.acos(0.5 / RADIUS);
        double left = Math.PI * RADIUS * RADIUS - 4 * RADIUS * RADIUS * (phi - Math.sin(phi)) / 2;
        assertEquals(left, PlanRegion.regular(RADIUS, 4, 1, 0).area(), 1e-12);
    }

    /** A slot from the rim: the rectangle and the segment beyond it, derived here: ∫ of √(R² − y²) − r0 over its width. */
    @Test
    void aSlotTakesAwayWhatLiesInIt() {
        double half = 0.03;
        double inner = 0.4;
        double lost = half * Math.sqrt(RADIUS * RADIUS - half * half)
                + RADIUS * RADIUS * Math.asin(half / RADIUS)
                - 2 * half * inner;
        MirrorSurface slotted = surface(new Smooth(), 0, ROUND.withSlot(2 * half, RADIUS - inner, Math.PI));
        assertEquals(Math.PI * RADIUS * RADIUS - lost, slotted.apertureArea(), 1e-12);
        assertEquals(slotted.apertureArea(), slotted.outlineArea(), 1e-12);
    }

    /** A slot is as long as it says from the straight edge where it is: a rectangle of a square (plane geometry). */
    @Test
    void aSlotBeginsAtAStraightEdge() {
        PlanRegion square = PlanRegion.regular(RADIUS, 4, 0.8, 0);
        assertEquals(
                square.area() - 0.06 * 0.25,
                square.withSlot(0.06, 0.25, Math.PI / 2).area(),
                1e-12);
        assertEquals(0.4 / Math.cos(0.3), square.reach(0.3), 1e-12);
        assertEquals(0, square.between(0, Math.PI).reach(-1), 1e-12);
    }

    @ParameterizedTest
    @MethodSource("cuts")
    void partsAddUpToTheWhole(Cut cut) {
        MirrorSurface whole = plan(cut, 0.1).surface(Direction.Z);
        for (double[] borders : new double[][] {{0, Math.PI, 2 * Math.PI}, {1, 2.2, 1 + 2 * Math.PI}}) {
            MirrorSurface one = surface(cut, 0.1, ROUND.between(borders[0], borders[1]));
            MirrorSurface other = surface(cut, 0.1, ROUND.between(borders[1], borders[2]));
            assertEquals(whole.outlineArea(), one.outlineArea() + other.outlineArea(), 1e-12);
            assertEquals(whole.apertureArea(), one.apertureArea() + other.apertureArea(), 2e-8);
        }
    }

    /** What is sampled, what is drawn and what is said to be the area are one shape. */
    @ParameterizedTest
    @MethodSource("cuts")
    void placesAndOutlinesFillTheArea(Cut cut) {
        List<PlanRegion> regions = List.of(
                PlanRegion.regular(RADIUS, 4, 0.8, 0),
                ROUND.between(-Math.PI / 2, Math.PI / 2).withSlot(0.05, 0.3, 0.2),
                PlanRegion.regular(RADIUS, 5, 0.95, 0.4).withSlot(0.1, 0.5, 2));
        for (PlanRegion region : regions) {
            DishPlan plan = plan(Clipped.of(cut, region), 0.1);
            MirrorSurface surface = plan.surface(Direction.Z);
            double drawn = 0;
            for (PanelOutline outline : plan.outlines()) {
                drawn += area(outline.edge()) - area(outline.hole());
                assertTrue(outline.panel() < surface.panels());
            }
            assertEquals(surface.apertureArea(), drawn, cut instanceof Smooth ? 4e-4 : 2e-5);
            MirrorPoints places = SurfaceSamples.places(surface, PLACES, 7);
            double mirror = 0;
            double all = 0;
            for (int i = 0; i < PLACES; i++) {
                double share = places.area[i] * places.nz[i] / PLACES;
                all += share;
                mirror += places.panel[i] >= 0 ? share : 0;
                assertTrue(places.panel[i] >= -surface.panels() && places.panel[i] < surface.panels());
                assertTrue(places.area[i] == 0 || region.contains(places.x[i], places.y[i]));
            }
            // Pseudo-random places: 4 standard errors of a share of half.
            double most = 4 * 0.5 / Math.sqrt(PLACES) * surface.sampledArea();
            assertEquals(surface.outlineArea(), all, most);
            assertEquals(surface.apertureArea(), mirror, most);
        }
    }

    private static double area(List<Vec> edge) {
        return edge.isEmpty()
                ? 0
                : new Polygon(edge.stream().map(v -> new Point(v.x(), v.y())).toList()).area();
    }

    /** Sheet unrolls without stretching: parts of a strip laid flat have the area of the strip (any text on differential geometry). */
    @Test
    void partsOfStripsLaidFlatKeepTheirArea() {
        BentStrips cut = new BentStrips(8);
        DishPlan whole = plan(cut, 0.1);
        double flat = whole.cut().flatPanels(whole).stream()
                .mapToDouble(panel -> panel.edge().area())
                .sum();
        double halves = Stream.of(ROUND.between(0.3, 2), ROUND.between(2, 0.3 + 2 * Math.PI))
                .map(region -> plan(Clipped.of(cut, region), 0.1))
                .flatMap(plan -> plan.cut().flatPanels(plan).stream())
                .mapToDouble(panel -> panel.edge().area())
                .sum();
        assertEquals(flat, halves, 2e-5);
    }

    @Test
    void tilesThatARimWouldCutAreLeftOut() {
        PlanRegion square = PlanRegion.regular(RADIUS, 4, 0.8, 0);
        DishPlan plan = plan(Clipped.of(Tiles.square(0.08), square), 0);
        // Common practice: 0.8 m hold 9 tiles of 84 mm and a little more, an odd number since one stands in the middle.
        assertEquals(81, plan.surface(Direction.Z).panels());
        assertEquals(81, plan.outlines().size());
    }
}
