package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GaussianSunTest extends SunShapeContract {
    private static final double SIGMA = 2.8e-3;

    @Override
    SunShape shape() {
        return new GaussianSun(SIGMA);
    }

    @Override
    double radianceByHand(double angle) {
        double tangent = Math.tan(angle);
        return Math.exp(-tangent * tangent / (1 + tangent * tangent) / (2 * SIGMA * SIGMA));
    }

    @Override
    long seed() {
        return 31_003;
    }

    /** The cut takes 2.7e-7 of σ², the sine adds σ² of it (derived: mean asin² of a q of mean 2σ²). */
    @Test
    void sigmaIsWhatWasAskedFor() {
        for (double sigma : new double[] {1e-6, 1e-3, SIGMA, 0.02}) {
            assertEquals(sigma, sigma(new GaussianSun(sigma)), (2e-7 + 2 * sigma * sigma) * sigma);
        }
    }

    /** Shares within n standard deviations: 1 − exp(−n²/2), derived. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.117503", "1, 0.393469", "2, 0.864665", "3, 0.988891"})
    void sharesAreThoseOfTheRayleighLaw(double n, double share) {
        assertEquals(share, shape().cumulative(n * SIGMA), 1e-5);
    }

    /** Two Kolmogorov-Smirnov tests of direction cosines, 0.0005 each, together at most 0.001. */
    @Test
    void directionCosinesAreNormal() {
        SplittableRandom random = new SplittableRandom(31_013);
        double[] x = new double[40_000];
        double[] y = new double[40_000];
        Arrays.setAll(x, i -> {
            double sine = Math.sin(shape().inverse(random.nextDouble()));
            double azimuth = 2 * Math.PI * random.nextDouble();
            y[i] = sine * Math.sin(azimuth);
            return sine * Math.cos(azimuth);
        });
        KolmogorovSmirnovTest test = new KolmogorovSmirnovTest();
        assertTrue(test.kolmogorovSmirnovTest(new NormalDistribution(0, SIGMA), x) > 0.0005);
        assertTrue(test.kolmogorovSmirnovTest(new NormalDistribution(0, SIGMA), y) > 0.0005);
    }

    @Test
    void isCutAtSixStandardDeviations() {
        assertEquals(6 * SIGMA, Math.sin(shape().largestAngle()), 1e-15);
        assertEquals("gaussian, sigma 2.8 mrad", shape().describe());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 0.11, Double.NaN})
    void refusesASigmaThatIsNone(double sigma) {
        assertThrows(IllegalArgumentException.class, () -> new GaussianSun(sigma));
    }
}
