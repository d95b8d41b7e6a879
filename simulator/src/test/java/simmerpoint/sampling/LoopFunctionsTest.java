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

    /** The stated 1e-14, and two units in the last place of the answer where that is more. */
    @Test
    void fastLogIsTheLogarithm() {
        SplittableRandom random = new SplittableRandom(40_001);
        for (int i = 0; i < 50_000; i++) {
            double x = (1 + random.nextDouble()) * Math.pow(2, random.nextInt(-1000, 1000));
            double wanted = StrictMath.log(x);
            near("ln", x, wanted, FastLog.ln(x), 1e-14 + 2 * Math.ulp(wanted));
        }
        for (double x : new double[] {1, Math.nextDown(1), Math.nextUp(1), 2, 0.5, Double.MIN_NORMAL, 1e-300}) {
            near("ln", x, StrictMath.log(x), FastLog.ln(x), 1e-14 + 2 * Math.ulp(StrictMath.log(x)));
        }
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

    @Test
    void radiusLawIsTheSignedRayleighLaw() {
        for (double x = -8.4; x <= 8.4; x += 0.00131) {
            near("share below", x, share(x), FastSignedRayleigh.cumulative(x), 1e-11);
        }
        for (double x : new double[] {0, -0.0, 50, 1e200, Double.POSITIVE_INFINITY}) {
            near("share below", x, share(x), FastSignedRayleigh.cumulative(x), 1e-11);
            near("share below", -x, share(-x), FastSignedRayleigh.cumulative(-x), 1e-11);
        }
    }

    /** x² is minus twice a logarithm, so that is what the error of the logarithm bounds. */
    @Test
    void radiusOfAShareIsThatOfTheSignedRayleighLaw() {
        SplittableRandom random = new SplittableRandom(40_002);
        for (int i = 0; i < 50_000; i++) {
            double y = i % 2 == 0 ? random.nextDouble() : Math.pow(10, -200 * random.nextDouble());
            double wanted = quantile(y);
            double got = FastSignedRayleigh.inverse(y);
            near("share", y, wanted * wanted, got * got, 1e-13 + 1e-13 * wanted * wanted);
            assertTrue(wanted * got >= 0, () -> "sign at share " + y);
        }
    }

    @Test
    void radiiOfTheEndsAreFinite() {
        assertEquals(-37.17, FastSignedRayleigh.inverse(0), 0.01);
        assertEquals(37.17, FastSignedRayleigh.inverse(1), 0.01);
        assertEquals(0, FastSignedRayleigh.inverse(0.5), 2e-7);
        assertEquals(-8.57, FastSignedRayleigh.inverse(Math.ulp(0.5)), 0.2);
    }
}
