package simmerpoint.tracing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.sun.CircumsolarSun;
import simmerpoint.sun.GaussianSun;
import simmerpoint.sun.LimbDarkenedSun;
import simmerpoint.sun.SunShape;
import simmerpoint.sun.UniformDiscSun;

class SunAngleTableTest {
    private static final int N = 50_000;

    static Stream<SunShape> shapes() {
        return Stream.of(
                UniformDiscSun.MEAN_SUN, new LimbDarkenedSun(4.65e-3), new GaussianSun(3e-3), new CircumsolarSun(0.1));
    }

    /** Single precision: 24 bits, of a small angle. */
    private static final double FLOAT = 2e-9;

    private static float[] even() {
        float[] u = new float[N];
        for (int i = 0; i < N; i++) {
            u[i] = (float) ((i + 0.5) / N);
        }
        return u;
    }

    private static float[] sines(SunShape shape) {
        float[] sines = new float[N];
        SunAngleTable.of(shape).fill(even(), N, sines);
        return sines;
    }

    @Test
    void isExactForAUniformDisc() {
        float[] sines = sines(UniformDiscSun.MEAN_SUN);
        for (int i = 0; i < N; i++) {
            double wanted = Math.sin(UniformDiscSun.MEAN_SUN.halfAngle()) * Math.sqrt((i + 0.5) / N);
            assertEquals(wanted, sines[i], FLOAT);
        }
    }

    /** Every angle drawn holds the share of the light it was drawn for, to the stated 1/2048; angles never fall. */
    @ParameterizedTest
    @MethodSource("shapes")
    void anglesHoldTheirShareOfTheLight(SunShape shape) {
        float[] sines = sines(shape);
        double last = 0;
        for (int i = 0; i < N; i++) {
            assertEquals((i + 0.5) / N, shape.cumulative(Math.asin(sines[i])), 1.0 / 2048);
            assertTrue(sines[i] >= last);
            last = sines[i];
        }
    }

    /** The mean of sin² over all angles is that of the shape's own inverse, to the stated 0.1 % of the width. */
    @ParameterizedTest
    @MethodSource("shapes")
    void spreadIsThatOfTheShape(SunShape shape) {
        float[] sines = sines(shape);
        float[] u = even();
        double got = 0;
        double wanted = 0;
        for (int i = 0; i < N; i++) {
            double exact = Math.sin(shape.inverse(u[i]));
            got += sines[i] * sines[i];
            wanted += exact * exact;
        }
        assertEquals(wanted, got, 2e-3 * wanted);
    }

    @Test
    void endsOfTheTableAreTheEndsOfTheSun() {
        float[] out = new float[2];
        SunAngleTable.of(UniformDiscSun.MEAN_SUN).fill(new float[] {0, Math.nextDown(1f)}, 2, out);
        assertEquals(0, out[0], 1e-15);
        assertEquals(Math.sin(UniformDiscSun.MEAN_SUN.halfAngle()), out[1], FLOAT);
    }
}
