package simmerpoint.tracing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/** The formulas of the ray loop against the law of reflection written in vectors and in double precision. */
class ReflectedDirectionsTest {
    private static final int RAYS = 5000;

    /** A few roundings of single precision, 6e-8 each. */
    private static final double FLOAT = 1e-6;

    /** Random normals and suns; the first ray comes in square to its mirror, some graze theirs. Tilts up to 0.3. */
    private static LightBatch light(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        LightBatch light = new LightBatch(RAYS);
        for (int i = 0; i < RAYS; i++) {
            Vec n = any(random);
            Vec s = i == 0 ? n : any(random);
            s = s.dot(n) < 0 ? s.times(-1) : s;
            put(light.nx, light.ny, light.nz, i, n);
            put(light.sx, light.sy, light.sz, i, s);
            light.cosine[i] = (float) n.dot(s);
            for (LightBatch.Tilts tilts : light.tilts) {
                Vec tilt = Direction.of(n.cross(any(random))).vec().times(random.nextDouble(-0.3, 0.3));
                put(tilts.x(), tilts.y(), tilts.z(), i, tilt);
            }
        }
        return light;
    }

    private static Vec any(SplittableRandom random) {
        return Direction.of(new Vec(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1)))
                .vec();
    }

    private static void put(float[] x, float[] y, float[] z, int i, Vec v) {
        x[i] = (float) v.x();
        y[i] = (float) v.y();
        z[i] = (float) v.z();
    }

    private static Vec normal(LightBatch light, int i) {
        return new Vec(light.nx[i], light.ny[i], light.nz[i]);
    }

    private static Vec sun(LightBatch light, int i) {
        return new Vec(light.sx[i], light.sy[i], light.sz[i]);
    }

    private static Vec tilt(LightBatch light, int line, int i) {
        LightBatch.Tilts tilts = light.tilts[line];
        return new Vec(tilts.x()[i], tilts.y()[i], tilts.z()[i]);
    }

    private static Vec out(ReflectedDirections out, int i) {
        return new Vec(out.dx[i], out.dy[i], out.dz[i]);
    }

    private static Vec reflected(LightBatch light, int i, Vec tilt) {
        Vec m = Direction.of(normal(light, i).plus(tilt)).vec();
        Vec s = sun(light, i);
        return m.times(2 * m.dot(s)).minus(s);
    }

    /** Textbook law of reflection at the tilted normal, for tilts up to 0.6: far beyond first order. */
    @Test
    void reflectsExactlyAtTheTiltedNormal() {
        LightBatch light = light(80_001);
        SplittableRandom random = new SplittableRandom(80_002);
        ReflectedDirections out = new ReflectedDirections(RAYS);
        float[] line = new float[RAYS];
        for (int i = 0; i < RAYS; i++) {
            line[i] = i % 2;
            out.radius[i] = (float) random.nextDouble(-2, 2);
        }
        out.selectLines(light, line);
        out.reflect(light, RAYS);
        for (int i = 0; i < RAYS; i++) {
            Vec wanted = reflected(light, i, tilt(light, i % 2, i).times(out.radius[i]));
            assertEquals(0, wanted.minus(out(out, i)).length(), FLOAT, "ray " + i);
        }
    }

    /** The rays listed, and no others, are reflected the same. */
    @Test
    void listedRaysAreReflectedTheSame() {
        LightBatch light = light(80_004);
        int[] list = {17, 4, 4999, 256, 4};
        float[] line = {0, 1, 1, 0, 0};
        LightBatch listed = new LightBatch(list.length);
        listed.copyListed(light, list, list.length);
        ReflectedDirections out = new ReflectedDirections(list.length);
        Arrays.fill(out.radius, 0.7f);
        out.selectLines(light, line, list, list.length);
        out.reflect(listed, list.length);
        for (int k = 0; k < list.length; k++) {
            Vec wanted = reflected(
                    light, list[k], tilt(light, (int) line[k], list[k]).times(0.7f));
            assertEquals(0, wanted.minus(out(out, k)).length(), FLOAT, "ray " + k);
        }
    }

    /** Square to the mirror and without a tilt the ray goes straight back. */
    @Test
    void goesStraightBackFromNormalIncidence() {
        LightBatch light = light(80_001);
        ReflectedDirections out = new ReflectedDirections(RAYS);
        out.reflect(light, RAYS);
        assertEquals(0, sun(light, 0).minus(out(out, 0)).length(), FLOAT);
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
            light.cosine[i] = 0.5f;
        }
        ReflectedDirections out = new ReflectedDirections(2);
        out.tiltX[0] = 5e-3f;
        out.tiltY[1] = 5e-3f;
        Arrays.fill(out.radius, 1);
        out.reflect(light, 2);
        Vec straight = new Vec(-s.x(), 0, 0.5);
        assertEquals(10.000e-3, Direction.of(out(out, 0)).vec().cross(straight).length(), 1e-6);
        assertEquals(5.000e-3, Direction.of(out(out, 1)).vec().cross(straight).length(), 2e-5);
    }
}
