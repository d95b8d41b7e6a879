package simmerpoint.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/** The closed cylinder against walking along the ray in small steps until something solid is reached. */
class CylinderTest {
    private static final double RADIUS = 0.12;
    private static final double HEIGHT = 0.11;
    private static final double STEP = 2e-4;

    private static boolean solid(Vec p) {
        return p.z() >= 0 && p.z() <= HEIGHT && Math.hypot(p.x(), p.y()) <= RADIUS;
    }

    /** Distance at which the walk first stands in the cylinder, NaN if it never does. */
    private static double walk(Vec from, Vec d) {
        for (double t = 0; t < 1.6; t += STEP) {
            if (solid(from.plus(d.times(t)))) {
                return t;
            }
        }
        return Double.NaN;
    }

    /** The face through which a walk entered at {@code last}, one step after standing outside; NOTHING near an edge. */
    private static int face(Vec last, Vec d) {
        Vec before = last.minus(d.times(STEP));
        boolean below = before.z() < 0;
        boolean above = before.z() > HEIGHT;
        boolean beside = Math.hypot(before.x(), before.y()) > RADIUS;
        int faces = (below ? 1 : 0) + (above ? 1 : 0) + (beside ? 1 : 0);
        if (faces != 1) {
            return Cylinder.NOTHING;
        }
        return below ? Cylinder.UNDERSIDE : above ? Cylinder.LID : Cylinder.WALL;
    }

    private static Vec any(SplittableRandom random, double rayParameter) {
        return new Vec(
                random.nextDouble(-rayParameter, rayParameter),
                random.nextDouble(-rayParameter, rayParameter),
                random.nextDouble(-rayParameter, rayParameter));
    }

    @Test
    void raysMeetWhatAWalkMeets() {
        SplittableRandom random = new SplittableRandom(90_001);
        Cylinder body = new Cylinder(RADIUS, HEIGHT, false);
        int[] met = new int[4];
        for (int i = 0; i < 3000; i++) {
            Vec from = any(random, 0.4).plus(new Vec(0, 0, HEIGHT / 2));
            Vec d = Direction.of(any(random, 0.15).plus(new Vec(0, 0, 0.05)).minus(from))
                    .vec();
            double length = random.nextDouble(0.3, 3);
            int got = solid(from)
                    ? -1
                    : body.intersect(from.x(), from.y(), from.z(), length * d.x(), length * d.y(), length * d.z());
            double t = walk(from, d);
            int wanted = Double.isNaN(t) ? Cylinder.NOTHING : face(from.plus(d.times(t)), d);
            if (got > Cylinder.NOTHING && wanted > Cylinder.NOTHING) {
                met[got]++;
                assertEquals(wanted, got, "ray " + i);
                assertEquals(t, body.rayParameter * length, 1.01 * STEP, "reach of ray " + i);
                Vec hit = from.plus(d.times(body.rayParameter * length));
                assertEquals(0, hit.minus(new Vec(body.x, body.y, body.z)).length(), 1e-12);
                onFace(got, body);
            } else if (got >= 0) {
                grazes(from, d, got, t, i);
            }
        }
        for (int face = 1; face < 4; face++) {
            assertTrue(met[face] > 300, "face " + face + " met only " + met[face] + " times");
        }
    }

    private static void onFace(int face, Cylinder body) {
        if (face == Cylinder.WALL) {
            assertEquals(RADIUS, Math.hypot(body.x, body.y), 1e-12);
            assertTrue(body.z >= 0 && body.z <= HEIGHT);
        } else {
            assertEquals(face == Cylinder.LID ? HEIGHT : 0, body.z);
            assertTrue(Math.hypot(body.x, body.y) <= RADIUS);
        }
    }

    /** A miss must be a miss for the walk; a hit that the walk has missed, or entered by an edge, must be a close shave. */
    private static void grazes(Vec from, Vec d, int got, double walked, int ray) {
        if (got == Cylinder.NOTHING) {
            assertTrue(Double.isNaN(walked), "ray " + ray + " passes through, so a walk at " + walked);
            return;
        }
        boolean near = false;
        for (double t = 0; t < 1.6; t += STEP) {
            Vec p = from.plus(d.times(t));
            double side = Math.abs(Math.hypot(p.x(), p.y()) - RADIUS);
            double flat = Math.min(Math.abs(p.z()), Math.abs(p.z() - HEIGHT));
            near |= side < 4 * STEP && flat < 4 * STEP;
            near |= side < STEP && p.z() > -STEP && p.z() < HEIGHT + STEP && Double.isNaN(walked);
        }
        assertTrue(near, "ray " + ray + " meets face " + got + ", a walk does not");
    }

    @Test
    void aBareDiscIsSeenFromBelowOnly() {
        Cylinder disc = new Cylinder(RADIUS, 0, true);
        assertEquals(Cylinder.UNDERSIDE, disc.intersect(0.05, 0, -1, 0, 0, 1));
        assertEquals(Cylinder.NOTHING, disc.intersect(0.05, 0, 1, 0, 0, -1));
        assertEquals(Cylinder.NOTHING, disc.intersect(0.13, 0, -1, 0, 0, 1));
        assertTrue(disc.crossesBase);
        assertEquals(Cylinder.NOTHING, disc.intersect(-1, 0, 0, 1, 0, 0));
    }

    @Test
    void crossingIsToldWhateverIsMet() {
        Cylinder body = new Cylinder(RADIUS, HEIGHT, false);
        assertEquals(Cylinder.WALL, body.intersect(-0.3, 0, -0.1, 0.2, 0, 0.15));
        assertTrue(body.crossesBase);
        assertEquals(Cylinder.NOTHING, body.intersect(-0.3, 0, -0.1, -0.2, 0, 0.11));
        assertTrue(body.crossesBase);
        assertEquals(Cylinder.WALL, body.intersect(-0.3, 0, 0.05, 1, 0, 0));
        assertTrue(!body.crossesBase);
        assertEquals(0.18, body.rayParameter, 1e-12);
    }

    @Test
    void upwardAndLevelRaysInTheCorners() {
        Cylinder body = new Cylinder(RADIUS, HEIGHT, false);
        assertEquals(Cylinder.NOTHING, body.intersect(0, 0, HEIGHT + 0.1, 0, 0, 1));
        assertEquals(Cylinder.NOTHING, body.intersect(0, 0, HEIGHT + 0.1, 1, 0, 0));
        assertEquals(Cylinder.LID, body.intersect(0, 0, HEIGHT + 0.1, 0, 0, -1));
        assertEquals(Cylinder.NOTHING, body.intersect(0, 0, -0.1, 1, 0, 0));
        assertEquals(Cylinder.NOTHING, body.intersect(0, 0, -0.1, 0, 0, -1));
        assertEquals(Cylinder.NOTHING, body.intersect(0.2, 0, 0.05, 0, 1, 0), "straight past");
    }
}
