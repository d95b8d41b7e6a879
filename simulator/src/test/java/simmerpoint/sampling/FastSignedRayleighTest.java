package simmerpoint.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.distribution.ExponentialDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.RealDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;

class FastSignedRayleighTest {
    private static final int DRAWS = 40_000;

    private static double density(double x) {
        return 0.5 * Math.abs(x) * Math.exp(-0.5 * x * x);
    }

    private static float cumulative(double x) {
        float[] out = new float[1];
        FastSignedRayleigh.roughCumulative(new float[] {(float) x}, 1, out);
        return out[0];
    }

    private static float inverse(double y) {
        float[] out = {(float) y};
        FastSignedRayleigh.inverse(out, 1, new float[1]);
        return out[0];
    }

    /** By Gauss-Legendre quadrature of Commons Math, cut at 0 where the density has its corner. */
    @Test
    void cumulativeIsTheIntegralOfDensity() {
        IterativeLegendreGaussIntegrator quadrature = new IterativeLegendreGaussIntegrator(16, 1e-13, 1e-15);
        double below = quadrature.integrate(100_000, FastSignedRayleighTest::density, -12, 0);
        assertEquals(0.5, below, 1e-12);
        for (double x = 0.1; x < 7; x += 0.3) {
            double above = quadrature.integrate(100_000, FastSignedRayleighTest::density, 0, x);
            assertEquals(below + above, cumulative(x), 2e-5);
            assertEquals(below - above, cumulative(-x), 2e-5);
        }
    }

    /**
     * A direction uniform on half a turn and a signed distance make two standard normal coordinates. Five
     * Kolmogorov-Smirnov tests at 0.0002 each, together a false-alarm rate of at most 0.001: both coordinates, both
     * diagonals, and the square of the distance, which is exponential of mean 2. The diagonals would catch coordinates
     * that are normal and not independent.
     */
    @Test
    void directionAndSignedDistanceMakeTwoNormalCoordinates() {
        SplittableRandom random = new SplittableRandom(20_003);
        double[] x = new double[DRAWS];
        double[] y = new double[DRAWS];
        for (int i = 0; i < DRAWS; i++) {
            double direction = Math.PI * random.nextDouble();
            double distance = inverse(random.nextDouble());
            x[i] = distance * Math.cos(direction);
            y[i] = distance * Math.sin(direction);
        }
        RealDistribution normal = new NormalDistribution(0, 1);
        assertFits("x", normal, x);
        assertFits("y", normal, y);
        assertFits("rising diagonal", normal, combine((a, b) -> (a + b) / Math.sqrt(2), x, y));
        assertFits("falling diagonal", normal, combine((a, b) -> (a - b) / Math.sqrt(2), x, y));
        assertFits("square", new ExponentialDistribution(2), combine((a, b) -> a * a + b * b, x, y));
    }

    private static double[] combine(DoubleBinaryOperator rule, double[] x, double[] y) {
        double[] result = new double[x.length];
        Arrays.setAll(result, i -> rule.applyAsDouble(x[i], y[i]));
        return result;
    }

    private static void assertFits(String what, RealDistribution law, double[] draws) {
        double p = new KolmogorovSmirnovTest().kolmogorovSmirnovTest(law, draws);
        assertTrue(p > 0.0002, what + ": p " + p);
    }
}
