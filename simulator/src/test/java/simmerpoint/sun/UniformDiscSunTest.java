package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.UniformRealDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UniformDiscSunTest extends SunShapeContract {
    private static final double HALF_ANGLE = 4.65e-3;

    @Override
    SunShape shape() {
        return new UniformDiscSun(HALF_ANGLE);
    }

    @Override
    double radianceByHand(double angle) {
        return 1;
    }

    @Override
    long seed() {
        return 31_001;
    }

    /** Moments of a uniform disc in small angles, derived: half-angle over 2, over √2, times 2/3. */
    @Test
    void momentsAreThoseOfADisc() {
        assertEquals(2.32500e-3, sigma(shape()), 1e-7);
        double squares = 0;
        double sum = 0;
        int draws = 200_000;
        SplittableRandom random = new SplittableRandom(31_011);
        for (int i = 0; i < draws; i++) {
            double angle = shape().inverse(random.nextDouble());
            squares += angle * angle;
            sum += angle;
        }
        // 4 standard errors, false-alarm rate 6e-5 each: θ² has the deviation θs²/√12, θ has θs/√18.
        double se = HALF_ANGLE * HALF_ANGLE / Math.sqrt(12.0 * draws);
        assertEquals(3.28805e-3 * 3.28805e-3, squares / draws, 4 * se + 1e-10);
        assertEquals(3.10000e-3, sum / draws, 4 * HALF_ANGLE / Math.sqrt(18.0 * draws));
    }

    /** Derived: sin²θ is uniform. One Kolmogorov-Smirnov test, false-alarm rate 0.001. */
    @Test
    void squareOfTheSineIsUniform() {
        double top = Math.pow(Math.sin(HALF_ANGLE), 2);
        double[] draws = new SplittableRandom(31_012)
                .doubles(50_000)
                .map(u -> Math.pow(Math.sin(shape().inverse(u)), 2))
                .toArray();
        double p = new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new UniformRealDistribution(0, top), draws);
        assertTrue(p > 0.001, "p " + p);
    }

    /** IAU 2015 Resolution B3 (695 700 km) over IAU 2012 Resolution B2 (149 597 870.7 km): 4.6505 mrad. */
    @Test
    void meanSunHasTheSizeTheAstronomersAgreedOn() {
        assertEquals(4.65048e-3, UniformDiscSun.MEAN_SUN.halfAngle(), 1e-8);
        assertEquals(695_700.0 / 149_597_870.7, Math.sin(UniformDiscSun.MEAN_SUN.halfAngle()), 1e-15);
    }

    /** A disc of 0.1 rad against the closed form of ∫ θ² sin 2θ dθ; a tiny one against half-angle over 2. */
    @Test
    void sigmaHoldsForWideAndTinyDiscs() {
        double a = 0.1;
        double closed = -0.5 * a * a * Math.cos(2 * a) + 0.5 * a * Math.sin(2 * a) + 0.25 * (Math.cos(2 * a) - 1);
        double sigma = Math.sqrt(0.5 * closed) / Math.sin(a);
        assertEquals(sigma, sigma(new UniformDiscSun(a)), 1e-12);
        assertEquals(5e-10, sigma(new UniformDiscSun(1e-9)), 1e-21);
    }

    @Test
    void saysItsHalfAngle() {
        assertEquals("uniform disc, half-angle 4.65 mrad", shape().describe());
        assertEquals("uniform disc, half-angle 10 mrad", new UniformDiscSun(0.01).describe());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1e-3, 0.2, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesAHalfAngleThatIsNone(double halfAngle) {
        assertThrows(IllegalArgumentException.class, () -> new UniformDiscSun(halfAngle));
    }
}
