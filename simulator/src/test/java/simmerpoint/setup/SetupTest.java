package simmerpoint.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.pan.Target;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

class SetupTest {
    private static final Pan PAN = new Pan(0.24, 0.11, new Finish("black", 0.9));

    private static Setup setup(double elevationDegrees, Aim aim, Target target, Stand stand) {
        Sunlight sun = new Sunlight(Math.toRadians(elevationDegrees), 850, UniformDiscSun.MEAN_SUN);
        return Setup.of(new DishPlan(1.2, 0.8, 0, 0, new Smooth()), sun, aim, target, stand);
    }

    private static void same(double x, double y, double z, Vec got) {
        assertEquals(x, got.x(), 1e-12);
        assertEquals(y, got.y(), 1e-12);
        assertEquals(z, got.z(), 1e-12);
    }

    /** At 30° sine and cosine are ½ and √¾, so the moves can be checked in the head. */
    @Test
    void movesAtThirtyDegrees() {
        double c = Math.sqrt(0.75);
        same(0, 0, 0.1, Setup.offset(new Stand(0.1, 0, 0, 0), Math.PI / 6));
        same(-0.05, 0, 0.1 * c, Setup.offset(new Stand(0, 0.1, 0, 0), Math.PI / 6));
        same(0.1 * c, 0, 0.05, Setup.offset(new Stand(0, 0, 0.1, 0), Math.PI / 6));
        same(0, 0.1, 0, Setup.offset(new Stand(0, 0, 0, 0.1), Math.PI / 6));
    }

    /** With the sun overhead a raise is a pull-back, and a slide goes straight across. */
    @Test
    void movesUnderTheZenith() {
        same(0, 0, 0.1, Setup.offset(new Stand(0, 0, 0.1, 0), Math.PI / 2));
        same(-0.1, 0, 0, Setup.offset(new Stand(0, 0.1, 0, 0), Math.PI / 2));
    }

    @Test
    void axisTooHighTipsTheAxisToTheUpperEdge() {
        Setup up = setup(50, new Aim(0.01, 0, 0, 0, 0, 0, Aim.PanCarrier.STAND), PAN, Stand.AT_FOCUS);
        assertEquals(
                0.8 * Math.sin(0.01), up.dish().toParent(new Vec(0, 0, 0.8)).x(), 1e-12);
        Setup side = setup(50, new Aim(0, 0.01, 0, 0, 0, 0, Aim.PanCarrier.STAND), PAN, Stand.AT_FOCUS);
        assertEquals(
                0.8 * Math.sin(0.01), side.dish().toParent(new Vec(0, 0, 0.8)).y(), 1e-12);
    }

    /** A mount behind the vertex carries the focus further: by (f + b) times the angle. */
    @Test
    void theMountsDistanceAddsToTheLever() {
        Setup up = setup(50, new Aim(0.01, 0, 0, 0, 0, 0.3, Aim.PanCarrier.STAND), PAN, Stand.AT_FOCUS);
        assertEquals(
                1.1 * Math.sin(0.01), up.dish().toParent(new Vec(0, 0, 0.8)).x(), 1e-12);
        assertEquals(0.3 * Math.sin(0.01), up.dish().origin().x(), 1e-12);
    }

    @Test
    void aBareDiscLeansAsItIsTold() {
        Setup square = setup(20, Aim.PERFECT, new Plane(0.2, 0), Stand.AT_FOCUS);
        same(0, 0, 1, square.target().rotation().apply(Direction.Z).vec());
        Setup lean = setup(20, Aim.PERFECT, new Plane(0.2, 0.3), Stand.AT_FOCUS);
        same(
                Math.sin(0.3),
                0,
                Math.cos(0.3),
                lean.target().rotation().apply(Direction.Z).vec());
        same(0, 1, 0, lean.target().rotation().apply(Direction.Y).vec());
    }

    /** The dish's frame seen from the target puts the focus where the target stands. */
    @Test
    void dishInTargetPutsTheFocusAtTheMiddle() {
        Aim aim = new Aim(0.05, -0.02, 0, 0, 0, 0.1, Aim.PanCarrier.DISH);
        Setup setup = setup(40, aim, PAN, Stand.AT_FOCUS);
        same(0, 0, 0, setup.dishInTarget().toParent(new Vec(0, 0, 0.8)));
    }

    /** Shadow of a cylinder by throwing points: 4 standard errors of the share (1 in 16,000). */
    @ParameterizedTest
    @CsvSource({"90", "60", "35", "5"})
    void silhouetteIsWhatACylinderHides(double elevationDegrees) {
        double a = Math.toRadians(elevationDegrees);
        Vec sun = new Vec(Math.cos(a), 0, Math.sin(a));
        Vec across = new Vec(0, 1, 0);
        Vec up = sun.cross(across);
        SplittableRandom random = new SplittableRandom(72_000 + (long) elevationDegrees);
        int n = 40_000;
        double half = 0.2;
        int hits = 0;
        for (int i = 0; i < n; i++) {
            Vec p = across.times(random.nextDouble(-half, half)).plus(up.times(random.nextDouble(-half, half)));
            hits += passesThroughPan(p, sun) ? 1 : 0;
        }
        double share = (double) hits / n;
        double area = 4 * half * half;
        double allowed = 4 * area * Math.sqrt(share * (1 - share) / n);
        assertEquals(area * share, Setup.silhouette(PAN, new Direction(sun)), allowed);
    }

    /** Whether the line through p along the sun meets the pan: looked at in 400 steps. */
    private static boolean passesThroughPan(Vec p, Vec sun) {
        for (int k = -200; k <= 200; k++) {
            Vec q = p.plus(sun.times(0.0015 * k));
            if (q.z() >= 0 && q.z() <= PAN.heightMetres() && Math.hypot(q.x(), q.y()) <= PAN.radiusMetres()) {
                return true;
            }
        }
        return false;
    }

    private static MirrorSurface surface(Cut cut) {
        return new DishPlan(1.2, 0.8, 0.06, 0, cut).surface(Direction.Z);
    }

    /** Level pan of radius R pulled towards the dish under the zenith: its edge is (f + p) − R²/4f above the mirror. */
    @ParameterizedTest
    @CsvSource({"-0.5, 0.2955", "-0.79, 0.0055", "-0.7955, 0", "-0.8, -0.0045", "0.1, 0.8955"})
    void clearanceOfALevelPanUnderTheZenith(double pullBack, double wanted) {
        Setup setup = setup(90, Aim.PERFECT, PAN, new Stand(pullBack, 0, 0, 0));
        assertEquals(wanted, Clearance.aboveMirror(surface(new Smooth()), setup, PAN), 1e-9);
    }

    /** A leaning disc: least over its rim in closed form, at the lower end −x where z = f + p − R·sin λ − (R·cos λ)²/4f. */
    @Test
    void clearanceOfALeaningDisc() {
        Plane disc = new Plane(0.4, 0.6);
        Setup setup = setup(50, Aim.PERFECT, disc, new Stand(-0.6, 0, 0, 0));
        double least = Double.POSITIVE_INFINITY;
        for (double t = 0; t < 6.283; t += 1e-4) {
            double x = 0.2 * Math.cos(t) * Math.cos(0.6);
            double y = 0.2 * Math.sin(t);
            double z = 0.2 - 0.2 * Math.cos(t) * Math.sin(0.6);
            least = Math.min(least, z - (x * x + y * y) / 3.2);
        }
        assertEquals(least, Clearance.aboveMirror(surface(new Smooth()), setup, disc), 1e-6);
    }

    /** Flat panels lie above the ribs' parabola in their middles, so there is less room, by a panel's depth at most. */
    @Test
    void clearanceCountsFromTheMirrorAsItIsCut() {
        Setup setup = setup(90, Aim.PERFECT, PAN, new Stand(-0.6, 0, 0, 0));
        double smooth = Clearance.aboveMirror(surface(new Smooth()), setup, PAN);
        double rings = Clearance.aboveMirror(surface(new FlatRings(24, 6, RingSpacing.EQUAL_WIDTH)), setup, PAN);
        assertTrue(rings <= smooth + 1e-12 && rings > smooth - 0.003, smooth + " and " + rings);
    }

    @Test
    void aPanBesideTheDishHasAllTheRoomThereIs() {
        Setup setup = setup(90, Aim.PERFECT, PAN, new Stand(-0.9, 0, 0, 0.8));
        assertEquals(Double.POSITIVE_INFINITY, Clearance.aboveMirror(surface(new Smooth()), setup, PAN));
    }
}
