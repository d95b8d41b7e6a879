package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.shape.Displacement;
import simmerpoint.dish.shape.RuledDeformation;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/**
 * Ribs that follow another parabola make the dish of that parabola, and ribs that lean all together make the same dish leaning:
 * two surfaces known without the code that is tested.
 */
class MeasuredRibsTest {
    private static final int SECTORS = 9;
    private static final double FOCAL = 0.45;
    /** Height r²·EXTRA above the plan: the parabola of focal length 1/(1/FOCAL + 4·EXTRA). */
    private static final double EXTRA = 0.05;

    private static final double OTHER_FOCAL = 1 / (1 / FOCAL + 4 * EXTRA);
    private static final int POINTS = 2000;

    private static DishPlan plan(double focal, Cut cut) {
        // Without gaps: these are equally wide in space, not in plan, and would be wider in plan on a flatter dish.
        return new DishPlan(0.9, focal, 0.06, 0, cut);
    }

    private static List<Double> radii() {
        return IntStream.rangeClosed(0, 90).mapToObj(k -> 0.005 * k).toList();
    }

    private static MeasuredRibs alike(Cut cut, DoubleUnaryOperator height) {
        List<Double> rib = radii().stream().map(r -> height.applyAsDouble(r)).toList();
        return new MeasuredRibs(
                cut, radii(), IntStream.range(0, SECTORS).mapToObj(k -> rib).toList());
    }

    private static MirrorPoints fill(MirrorSurface surface) {
        SplittableRandom random = new SplittableRandom(5);
        MirrorPoints points = new MirrorPoints(POINTS);
        surface.fill(
                random.doubles(POINTS).sorted().toArray(),
                random.doubles(POINTS).toArray(),
                POINTS,
                points);
        return points;
    }

    private static void assertSame(MirrorSurface expected, MirrorSurface actual, double height, double slope) {
        MirrorPoints a = fill(expected);
        MirrorPoints b = fill(actual);
        for (int i = 0; i < POINTS; i++) {
            assertEquals(a.panel[i], b.panel[i]);
            if (a.panel[i] < 0) {
                continue;
            }
            assertEquals(a.x[i], b.x[i], 1e-12);
            assertEquals(a.y[i], b.y[i], 1e-12);
            assertEquals(a.z[i], b.z[i], height);
            assertEquals(a.z[i], actual.heightAt(b.x[i], b.y[i]), height);
            assertEquals(a.nx[i], b.nx[i], slope);
            assertEquals(a.ny[i], b.ny[i], slope);
            assertEquals(a.nz[i], b.nz[i], slope);
            assertEquals(a.area[i], b.area[i], slope * a.area[i]);
        }
        assertEquals(expected.outlineArea(), actual.outlineArea(), 1e-12);
        assertEquals(expected.apertureArea(), actual.apertureArea(), 1e-12);
        assertEquals(expected.panels(), actual.panels());
        assertEquals(expected.radius(), actual.radius(), 1e-12);
        // What is added is bounded on its own, so the sum may be more than the steepest place.
        assertTrue(actual.steepestSlope() >= expected.steepestSlope() - slope);
        assertEquals(expected.steepestSlope(), actual.steepestSlope(), 0.05);
    }

    @Test
    void bentStripsOnRibsOfAnotherParabolaAreItsStrips() {
        Cut strips = new BentStrips(SECTORS);
        MeasuredRibs ribs = alike(strips, r -> EXTRA * r * r);
        assertSame(
                plan(OTHER_FOCAL, strips).surface(Direction.Z),
                plan(FOCAL, ribs).surface(Direction.Z),
                2e-6,
                2e-4);
    }

    /** The corners of every flat panel lie on the ribs, so its plane is the other dish's. */
    @Test
    void flatRingsOnRibsOfAnotherParabolaAreItsPanels() {
        Cut rings = new FlatRings(SECTORS, 4, RingSpacing.EQUAL_WIDTH);
        MeasuredRibs ribs = alike(rings, r -> EXTRA * r * r);
        assertSame(
                plan(OTHER_FOCAL, rings).surface(Direction.Z), plan(FOCAL, ribs).surface(Direction.Z), 2e-6, 2e-4);
    }

    @Test
    void ribsAsPlannedChangeNothing() {
        Cut rings = new FlatRings(SECTORS, 4, RingSpacing.EQUAL_WIDTH);
        assertSame(
                plan(FOCAL, rings).surface(Direction.Z),
                plan(FOCAL, alike(rings, r -> 0)).surface(Direction.Z),
                1e-15,
                1e-15);
    }

    /** Rib k stands at angle 2πk/n from +x, so in the plane z = ax + by it is r(a·cos + b·sin) high. */
    @Test
    void ribsThatLieInOneSlopingPlaneLeanTheDishByIt() {
        double a = 0.02;
        double b = -0.03;
        List<List<Double>> heights = IntStream.range(0, SECTORS)
                .mapToObj(k -> {
                    double angle = 2 * Math.PI * k / SECTORS;
                    return radii().stream()
                            .map(r -> r * (a * Math.cos(angle) + b * Math.sin(angle)))
                            .toList();
                })
                .toList();
        MeasuredRibs ribs = new MeasuredRibs(new BentStrips(SECTORS), radii(), heights);
        RuledDeformation off = ribs.deformation(plan(FOCAL, ribs));
        SplittableRandom random = new SplittableRandom(2);
        for (int i = 0; i < 500; i++) {
            double x = random.nextDouble(-0.3, 0.3);
            double y = random.nextDouble(-0.3, 0.3);
            Displacement at = off.at(x, y);
            assertEquals(a * x + b * y, at.height(), 1e-9);
            assertEquals(a, at.slopeX(), 1e-6);
            assertEquals(b, at.slopeY(), 1e-6);
        }
        assertEquals(Math.hypot(a, b), off.steepest(0.03, 0.45), 1e-6);
    }

    /** Neighbours whose heights are r·s apart differ in slope by s; the others do not. */
    @Test
    void oneRibTooSteepDiffersFromItsNeighboursByItsSlope() {
        List<Double> zero = radii().stream().map(r -> 0.0).toList();
        List<Double> steep = radii().stream().map(r -> 0.01 * r).toList();
        List<List<Double>> heights =
                IntStream.range(0, SECTORS).mapToObj(k -> k == 3 ? steep : zero).toList();
        MeasuredRibs ribs = new MeasuredRibs(new BentStrips(SECTORS), radii(), heights);
        RuledDeformation off = ribs.deformation(plan(FOCAL, ribs));
        assertEquals(0.01, off.slopeDifference(2), 1e-9);
        assertEquals(0.01, off.slopeDifference(3), 1e-9);
        assertEquals(0, off.slopeDifference(4), 1e-12);
        assertEquals(0.01, ribs.slopeDifference(plan(FOCAL, ribs)), 1e-9);
        assertEquals(0.0045, ribs.farthestOff(3), 1e-12);
        assertEquals(0, ribs.farthestOff(2), 0);
        assertEquals(0, ribs.withRibMended(3).farthestOff(3), 0);
    }

    @Test
    void outlinesAreLiftedWithTheirRibs() {
        MeasuredRibs ribs = alike(new BentStrips(SECTORS), r -> EXTRA * r * r);
        List<PanelOutline> planned = plan(FOCAL, ribs.panels()).outlines();
        List<PanelOutline> lifted = plan(FOCAL, ribs).outlines();
        assertEquals(planned.size(), lifted.size());
        // An edge that lies on a rib is as high above its plan as the rib.
        for (int k = 0; k < planned.size(); k++) {
            List<Vec> from = planned.get(k).edge();
            List<Vec> to = lifted.get(k).edge();
            assertEquals(from.size(), to.size());
            for (int i = 0; i < from.size(); i++) {
                double r = Math.hypot(from.get(i).x(), from.get(i).y());
                double lift = to.get(i).z() - from.get(i).z();
                double atRib = EXTRA * r * r;
                // Between ribs a ruled surface lies at the height of the ribs' points, further out by up to 1/cos of
                // half a sector.
                double most = atRib / Math.pow(Math.cos(Math.PI / SECTORS), 2);
                assertTrue(lift >= atRib - 1e-6 && lift <= most + 1e-6, lift + " at " + r);
            }
        }
    }

    @Test
    void whatIsNotTheRibsComesFromThePanels() {
        Cut rings = new FlatRings(SECTORS, 4, RingSpacing.EQUAL_WIDTH);
        MeasuredRibs ribs = alike(rings, r -> 0.001);
        DishPlan measured = plan(FOCAL, ribs);
        DishPlan planned = plan(FOCAL, rings);
        assertEquals(rings.kind(), ribs.kind());
        assertEquals(rings.largestPanel(planned), ribs.largestPanel(measured));
        assertEquals(rings.shapeLossName(), ribs.shapeLossName());
        assertEquals(rings.gapLimit(0.9, 0.06), ribs.gapLimit(0.9, 0.06));
        assertEquals(rings.flatPanels(planned).size(), ribs.flatPanels(measured).size());
        assertTrue(ribs.description(measured, "36", m -> m + " m").endsWith("on ribs as measured"));
        assertEquals(rings, MeasuredRibs.mended(measured).cut());
        assertEquals(planned, MeasuredRibs.mended(planned));
        assertEquals(0.001, ribs.under(new BentStrips(SECTORS)).farthestOff(0), 0);
    }

    @Test
    void refusesWhatHasNoRibsAndTheWrongNumberOfThem() {
        assertThrows(IllegalArgumentException.class, () -> alike(new Smooth(), r -> 0));
        MeasuredRibs twice = alike(new BentStrips(SECTORS), r -> 0);
        assertThrows(IllegalArgumentException.class, () -> alike(twice, r -> 0));
        MeasuredRibs few = alike(new BentStrips(SECTORS + 1), r -> 0);
        assertThrows(IllegalArgumentException.class, () -> few.deformation(plan(FOCAL, few)));
    }
}
