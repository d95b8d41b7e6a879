package simmerpoint.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables of the ray loop against the slow functions they stand for. */
class LoopFunctionsTest {
    /** Writes its message only when it is needed: there are many numbers here. */
    private static void near(String what, double at, double wanted, double got, double allowed) {
        assertEquals(wanted, got, allowed, () -> what + " " + at);
    }

    /** The closed form of the cumulative distribution. */
    private static double share(double x) {
        double outside = 0.5 * StrictMath.exp(-0.5 * x * x);
        return x < 0 ? outside : 1 - outside;
    }

    /** Its inverse; 2u and 2(1 − u) are exact, so the logarithm is accurate near u = 1 as well. */
    private static double quantile(double u) {
        return u < 0.5 ? -Math.sqrt(-2 * StrictMath.log(2 * u)) : Math.sqrt(-2 * StrictMath.log(2 * (1 - u)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.5, 0.25})
    void unitCircleIsCosineAndSine(double turns) {
        double[] u = DoubleStream.iterate(0, x -> x <= 1, x -> x + 1.0 / 39_989).toArray();
        u[u.length - 1] = 1;
        double[] cos = new double[u.length];
        double[] sin = new double[u.length];
        FastSinCos.fill(u, turns, u.length, cos, sin);
        for (int i = 0; i < u.length; i++) {
            near("cos at", u[i], StrictMath.cos(turns * 2 * Math.PI * u[i]), cos[i], 1e-10);
            near("sin at", u[i], StrictMath.sin(turns * 2 * Math.PI * u[i]), sin[i], 1e-10);
        }
    }

    private static float[] evenly() {
        float[] u = new float[39_990];
        for (int i = 0; i < u.length; i++) {
            u[i] = (float) (i / 39_989.0);
        }
        return u;
    }

    @Test
    void fullCircleInSinglePrecision() {
        float[] u = evenly();
        float[] cos = new float[u.length];
        float[] sin = new float[u.length];
        ArrayFunctions.fullCircle(u, u.length, cos, sin, new float[u.length]);
        for (int i = 0; i < u.length; i++) {
            near("cos at", u[i], StrictMath.cos(2 * Math.PI * u[i]), cos[i], 1e-6);
            near("sin at", u[i], StrictMath.sin(2 * Math.PI * u[i]), sin[i], 1e-6);
        }
    }

    @Test
    void quarterCircleInSinglePrecision() {
        float[] u = evenly();
        float[] cos = new float[u.length];
        float[] sin = new float[u.length];
        ArrayFunctions.quarterCircle(u.clone(), u.length, cos, sin, new float[u.length]);
        for (int i = 0; i < u.length; i++) {
            near("cos at", u[i], StrictMath.cos(Math.PI / 2 * u[i]), cos[i], 3e-7);
            near("sin at", u[i], StrictMath.sin(Math.PI / 2 * u[i]), sin[i], 3e-7);
        }
    }

    /** Choices are exactly 0 or 1, down to the smallest difference that the strata of the ray loop can have. */
    @Test
    void choicesAreExact() {
        for (float x : new float[] {1e-15f, 3e-8f, 0.5f, 1, 1e10f}) {
            assertEquals(1, ArrayFunctions.above0(x));
            assertEquals(1, ArrayFunctions.notBelow0(x));
            assertEquals(0, ArrayFunctions.above0(-x));
            assertEquals(0, ArrayFunctions.notBelow0(-x));
            assertEquals(x, ArrayFunctions.positivePart(x));
            assertEquals(0, ArrayFunctions.positivePart(-x));
        }
        assertEquals(0, ArrayFunctions.above0(0));
        assertEquals(1, ArrayFunctions.notBelow0(0));
        assertEquals(3, ArrayFunctions.larger(3, -7), 1e-6);
        assertEquals(3, ArrayFunctions.larger(-7, 3), 1e-6);
    }

    private static float shareBelow(double x) {
        float[] out = new float[1];
        FastSignedRayleigh.roughCumulative(new float[] {(float) x}, 1, out);
        return out[0];
    }

    private static float radiusAt(double y) {
        float[] out = {(float) y};
        FastSignedRayleigh.inverse(out, 1, new float[1]);
        return out[0];
    }

    @Test
    void radiusLawIsTheSignedRayleighLaw() {
        for (double x = -8.4; x <= 8.4; x += 0.00131) {
            near("share below", x, share(x), shareBelow(x), 2e-5);
            float got = shareBelow(x);
            assertTrue(got >= 0 && got <= 1);
        }
        for (double x : new double[] {0, -0.0, 50, 1e12, 1e30}) {
            near("share below", x, share(x), shareBelow(x), 2e-5);
            near("share below", -x, share(-x), shareBelow(-x), 2e-5);
        }
        assertEquals(0, shareBelow(-6));
        assertEquals(1, shareBelow(6));
    }

    /** x² is minus twice a logarithm, so that is what the error of the logarithm bounds; the ends lie within half a step of 1. */
    @Test
    void radiusOfAShareIsThatOfTheSignedRayleighLaw() {
        SplittableRandom random = new SplittableRandom(40_002);
        for (int i = 0; i < 50_000; i++) {
            float y = (float) random.nextDouble();
            double wanted = quantile(y);
            double got = radiusAt(y);
            double end = Math.min(y, 1.0 - y);
            near("share", y, wanted * wanted, got * got, 1e-6 + 2e-7 / end);
            assertTrue(wanted * got >= 0, () -> "sign at share " + y);
        }
    }

    @Test
    void radiiOfTheEndsAreFinite() {
        assertEquals(-5.77, radiusAt(0), 0.01);
        assertEquals(5.77, radiusAt(1), 0.01);
        assertEquals(0, radiusAt(0.5), 5e-4);
        assertEquals(5.77, radiusAt(1.0000001), 0.01);
        assertEquals(-5.77, radiusAt(-1e-7), 0.01);
    }
}
