package simmerpoint.tracing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/** The expanded formulas of the ray loop against the law of reflection written in vectors. */
class ReflectedDirectionsTest {
    private static final int RAYS = 5000;

    /** Random normals and suns; the first ray comes in square to its mirror, some graze theirs. */
    private static LightBatch light(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        LightBatch light = new LightBatch(RAYS);
        for (int i = 0; i < RAYS; i++) {
            Vec n = any(random);
            Vec s = i == 0 ? n : any(random);
            s = s.dot(n) < 0 ? s.times(-1) : s;
            Vec c = n.cross(s);
            put(light.nx, light.ny, light.nz, i, n);
            put(light.sx, light.sy, light.sz, i, s);
            put(light.cx, light.cy, light.cz, i, c);
            light.cosine[i] = n.dot(s);
            light.inverseSine[i] = 1 / Math.sqrt(c.dot(c) + 1e-300);
            for (int line = 0; line < 2; line++) {
                light.tiltInPlane[i + line * RAYS] = random.nextDouble(-0.02, 0.02);
                light.tiltAcross[i + line * RAYS] = random.nextDouble(-0.02, 0.02);
            }
        }
        return light;
    }

    private static Vec any(SplittableRandom random) {
        return Direction.of(new Vec(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1)))
                .vec();
    }

    private static void put(double[] x, double[] y, double[] z, int i, Vec v) {
        x[i] = v.x();
        y[i] = v.y();
        z[i] = v.z();
    }

    private static Vec normal(LightBatch light, int i) {
        return new Vec(light.nx[i], light.ny[i], light.nz[i]);
    }

    private static Vec sun(LightBatch light, int i) {
        return new Vec(light.sx[i], light.sy[i], light.sz[i]);
    }

    private static Vec out(ReflectedDirections out, int i) {
        return new Vec(out.dx[i], out.dy[i], out.dz[i]);
    }

    /** The normal after its tilt: in the plane of incidence towards the sun, and across it. */
    private static Vec tilted(LightBatch light, int i, double in, double across) {
        Vec n = normal(light, i);
        Vec s = sun(light, i);
        Vec inPlane = Direction.of(s.minus(n.times(s.dot(n)))).vec();
        Vec square = n.cross(inPlane);
        return Direction.of(n.plus(inPlane.times(in)).plus(square.times(across)))
                .vec();
    }

    /** Textbook law of reflection at the tilted normal, for tilts up to 0.3: far beyond first order. */
    @Test
    void reflectsExactlyAtTheTiltedNormal() {
        LightBatch light = light(80_001);
        SplittableRandom random = new SplittableRandom(80_002);
        ReflectedDirections out = new ReflectedDirections(RAYS);
        for (int i = 1; i < RAYS; i++) {
            out.tiltInPlane[i] = random.nextDouble(-0.3, 0.3);
            out.tiltAcross[i] = random.nextDouble(-0.3, 0.3);
        }
        out.reflect(light);
        for (int i = 1; i < RAYS; i++) {
            Vec m = tilted(light, i, out.tiltInPlane[i], out.tiltAcross[i]);
            Vec s = sun(light, i);
            Vec wanted = m.times(2 * m.dot(s)).minus(s);
            double length = 1 + out.tiltInPlane[i] * out.tiltInPlane[i] + out.tiltAcross[i] * out.tiltAcross[i];
            assertEquals(
                    0, wanted.minus(out(out, i).times(1 / length)).length(), 1e-11 * light.inverseSine[i], "ray " + i);
        }
    }

    /** Square to the mirror there is no plane of incidence; without a tilt the ray goes straight back. */
    @Test
    void goesStraightBackFromNormalIncidence() {
        LightBatch light = light(80_001);
        ReflectedDirections out = new ReflectedDirections(RAYS);
        out.reflect(light);
        assertEquals(0, sun(light, 0).minus(out(out, 0)).length(), 1e-12);
    }

    /**
     * Derived: a tilt δ in the plane of incidence turns the ray by 2δ in it, a tilt δ across it by 2δ·cos i. At 60° and 5
     * mrad a target 1 m away, square to the ray, shows 10.000 mm and 5.000 mm; to first order in δ.
     */
    @Test
    void tiltAcrossCountsLessByTheCosine() {
        LightBatch light = new LightBatch(2);
        Vec s = new Vec(Math.sin(Math.PI / 3), 0, 0.5);
        for (int i = 0; i < 2; i++) {
            put(light.nx, light.ny, light.nz, i, Direction.Z.vec());
            put(light.sx, light.sy, light.sz, i, s);
            put(light.cx, light.cy, light.cz, i, Direction.Z.vec().cross(s));
            light.cosine[i] = 0.5;
            light.inverseSine[i] = 1 / Math.sin(Math.PI / 3);
        }
        ReflectedDirections out = new ReflectedDirections(2);
        out.tiltInPlane[0] = 5e-3;
        out.tiltAcross[1] = 5e-3;
        out.reflect(light);
        Vec straight = new Vec(-s.x(), 0, 0.5);
        assertEquals(10.000e-3, Direction.of(out(out, 0)).vec().cross(straight).length(), 1e-6);
        assertEquals(5.000e-3, Direction.of(out(out, 1)).vec().cross(straight).length(), 2e-5);
    }

    /** Against the difference of two reflections a little to both sides of the middle of each error line. */
    @Test
    void slopeIsTheDerivativeAlongEachLine() {
        LightBatch light = light(80_003);
        ReflectedDirections slope = new ReflectedDirections(RAYS);
        ReflectedDirections ahead = new ReflectedDirections(RAYS);
        ReflectedDirections behind = new ReflectedDirections(RAYS);
        double step = 1e-3;
        for (int line = 0; line < 2; line++) {
            slope.differentiate(light, line);
            for (int i = 0; i < RAYS; i++) {
                ahead.tiltInPlane[i] = step * light.tiltInPlane[i + line * RAYS];
                ahead.tiltAcross[i] = step * light.tiltAcross[i + line * RAYS];
                behind.tiltInPlane[i] = -ahead.tiltInPlane[i];
                behind.tiltAcross[i] = -ahead.tiltAcross[i];
            }
            ahead.reflect(light);
            behind.reflect(light);
            for (int i = 1; i < RAYS; i++) {
                Vec wanted = out(ahead, i).minus(out(behind, i)).times(0.5 / step);
                assertEquals(0, wanted.minus(out(slope, i)).length(), 1e-9, "ray " + i);
            }
        }
    }
}
