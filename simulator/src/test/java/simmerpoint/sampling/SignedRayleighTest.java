package simmerpoint.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
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

class SignedRayleighTest {
    private static final int DRAWS = 40_000;

    @Test
    void inverseUndoesCumulative() {
        for (double u : new double[] {1e-300, 1e-12, 0.01, 0.3, 0.49999999, 0.5, 0.50000001, 0.7, 0.99, 1 - 1e-12}) {
            assertEquals(u, SignedRayleigh.cumulative(SignedRayleigh.inverse(u)), 1e-12 * u, "u " + u);
        }
    }

    @Test
    void isSymmetric() {
        assertEquals(0, SignedRayleigh.inverse(0.5), 1e-300);
        for (double u = 0.03125; u < 0.5; u += 0.03125) {
            assertEquals(-SignedRayleigh.inverse(u), SignedRayleigh.inverse(1 - u));
        }
    }

    /** By Gauss-Legendre quadrature of Commons Math, cut at 0 where the density has its corner. */
    @Test
    void cumulativeIsTheIntegralOfDensity() {
        IterativeLegendreGaussIntegrator quadrature = new IterativeLegendreGaussIntegrator(16, 1e-13, 1e-15);
        double below = quadrature.integrate(100_000, SignedRayleigh::density, -12, 0);
        assertEquals(0.5, below, 1e-12);
        for (double x = 0.1; x < 7; x += 0.3) {
            double above = quadrature.integrate(100_000, SignedRayleigh::density, 0, x);
            assertEquals(below + above, SignedRayleigh.cumulative(x), 1e-12);
            assertEquals(below - above, SignedRayleigh.cumulative(-x), 1e-12);
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
            double distance = SignedRayleigh.inverse(random.nextDouble());
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

    @Test
    void refusesWhatIsNoShare() {
        assertThrows(IllegalArgumentException.class, () -> SignedRayleigh.inverse(-0.1));
        assertThrows(IllegalArgumentException.class, () -> SignedRayleigh.inverse(Double.NaN));
        assertEquals(Double.NEGATIVE_INFINITY, SignedRayleigh.inverse(0));
        assertEquals(Double.POSITIVE_INFINITY, SignedRayleigh.inverse(1));
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
