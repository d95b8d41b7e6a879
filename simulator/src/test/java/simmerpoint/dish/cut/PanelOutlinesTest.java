package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.SurfaceSamples;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mesh.Polygons;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/** The outlines that are drawn are those of the surface that is traced: compared place by place. */
class PanelOutlinesTest {
    private static final double F = 0.5;
    private static final double R = 0.6;

    static List<DishPlan> plans() {
        return List.of(
                plan(0.08, 0.01, new FlatRings(12, 4, RingSpacing.EQUAL_WIDTH)),
                plan(0, 0.01, new FlatRings(7, 3, RingSpacing.EQUAL_LENGTH)),
                plan(0, 0, new FlatRings(3, 1, RingSpacing.EQUAL_DEPTH_STEP)),
                plan(0.08, 0.01, new BentStrips(9)),
                plan(0, 0.004, new BentStrips(24)),
                plan(0.1, 0.002, Tiles.square(0.05)),
                plan(0, 0, Tiles.hexagon(0.08)),
                plan(0, 0.001, new Tiles(TileShape.SQUARE, 0.07, Tiles.AtRim.CUT)),
                plan(0.1, 0, new Tiles(TileShape.HEXAGON, 0.08, Tiles.AtRim.CUT)),
                plan(0.7, 0.002, new Tiles(TileShape.SQUARE, 0.06, Tiles.AtRim.CUT)),
                plan(0.1, 0, new Smooth()));
    }

    private static DishPlan plan(double hub, double gap, Cut cut) {
        return new DishPlan(2 * R, F, hub, gap, cut);
    }

    private static double[][] plan(List<Vec> edge) {
        return edge.stream().map(v -> new double[] {v.x(), v.y()}).toArray(double[][]::new);
    }

    private static Map<Integer, PanelOutline> byNumber(List<PanelOutline> all) {
        Map<Integer, PanelOutline> byNumber = new HashMap<>();
        all.forEach(o -> byNumber.put(o.panel(), o));
        assertEquals(all.size(), byNumber.size(), "a panel drawn twice");
        return byNumber;
    }

    /** Every place of the mirror lies in the outline of its own panel: one of 20,000 may be off where an edge is curved. */
    @ParameterizedTest
    @MethodSource("plans")
    void placesLieInTheOutlineOfTheirPanel(DishPlan plan) {
        MirrorSurface surface = plan.surface(Direction.Z);
        Map<Integer, PanelOutline> outlines = byNumber(plan.outlines());
        int n = 20_000;
        MirrorPoints p = SurfaceSamples.places(surface, n, 11);
        int strays = 0;
        for (int i = 0; i < n; i++) {
            if (p.panel[i] >= 0) {
                PanelOutline own = outlines.get(p.panel[i]);
                boolean inside = Polygons.contains(plan(own.edge()), p.x[i], p.y[i])
                        && !Polygons.contains(plan(own.hole()), p.x[i], p.y[i]);
                strays += inside ? 0 : 1;
            }
        }
        // A circle of 180 corners lacks 2·(pi/180)²/3 = 0.02 % of its area: 4 of 20,000.
        int most = plan.cut() instanceof Smooth ? 12 : 1;
        assertTrue(strays <= most, strays + " places of " + n + " lie outside the panel they belong to");
    }

    /** Together they have the area of the mirrors, so gaps are left out and nothing overlaps (shoelace rule). */
    @ParameterizedTest
    @MethodSource("plans")
    void togetherTheyAreTheAperture(DishPlan plan) {
        List<PanelOutline> outlines = plan.outlines();
        double area = outlines.stream()
                .mapToDouble(o -> Polygons.area(plan(o.edge())) - Polygons.area(plan(o.hole())))
                .sum();
        MirrorSurface surface = plan.surface(Direction.Z);
        assertEquals(surface.apertureArea(), area, 3e-4 * surface.apertureArea());
        assertEquals(surface.panels(), outlines.size());
    }

    /** Corners of flat panels and bent strips without gaps stand on the paraboloid; all corners on their surface. */
    @ParameterizedTest
    @MethodSource("plans")
    void cornersStandOnTheSurface(DishPlan plan) {
        MirrorSurface surface = plan.surface(Direction.Z);
        for (PanelOutline outline : plan.outlines()) {
            double mx = outline.edge().stream().mapToDouble(Vec::x).average().orElseThrow();
            double my = outline.edge().stream().mapToDouble(Vec::y).average().orElseThrow();
            for (Vec corner : outline.edge()) {
                // A hair inside, so that rounding does not ask the neighbour.
                double x = corner.x() + 1e-9 * (mx - corner.x());
                double y = corner.y() + 1e-9 * (my - corner.y());
                assertEquals(surface.heightAt(x, y), corner.z(), 1e-8);
                if (plan.gapMetres() == 0 && plan.cut() instanceof FlatRings) {
                    assertEquals((x * x + y * y) / (4 * F), corner.z(), 1e-8);
                }
            }
        }
    }

    @Test
    void perfectedPanelsKeepTheirOutline() {
        Cut rings = new FlatRings(12, 4, RingSpacing.EQUAL_WIDTH);
        assertEquals(
                plan(0.1, 0.002, rings).outlines(),
                plan(0.1, 0.002, new Perfected(rings, true, false)).outlines());
    }

    @Test
    void panelsThatTheGapEatsUpAreLeftOut() {
        DishPlan plan = plan(0, 0.2, new FlatRings(24, 6, RingSpacing.EQUAL_WIDTH));
        assertTrue(plan.outlines().size() < 144);
        assertTrue(plan(0, 0.2, new BentStrips(24)).outlines().isEmpty());
    }

    @Test
    void drawnPolygonsRunCounterClockwiseWhicheverWayTheyWereDrawn() {
        double[][] clockwise = {{0.1, 0.1}, {0.1, 0.4}, {0.5, 0.4}, {0.5, 0.1}};
        Mesh mesh = Polygons.inPlane(clockwise, 0.2, 0.1);
        List<PanelOutline> outlines = plan(0, 0, new FromFile(mesh)).outlines();
        assertEquals(1, outlines.size());
        assertEquals(0.12, Polygons.area(plan(outlines.get(0).edge())), 1e-12);
        assertTrue(outlines.get(0).edge().contains(new Vec(0.1, 0.4, 0.2 * 0.1 + 0.1 * 0.4)));
    }
}
