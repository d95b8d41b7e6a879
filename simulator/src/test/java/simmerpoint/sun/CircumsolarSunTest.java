package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CircumsolarSunTest extends SunShapeContract {
    private static final double DISC = 4.65e-3;
    private static final double RING = 43.6e-3;

    @Override
    SunShape shape() {
        return new CircumsolarSun(0.1);
    }

    /** The remembered formula again, in powers of ten and one exponential. */
    @Override
    double radianceByHand(double angle) {
        double t = 1000 * angle;
        return t <= 4.65
                ? Math.cos(0.326 * t) / Math.cos(0.308 * t)
                : Math.exp(0.9 * Math.log(1.35) * Math.pow(10, 0.3)
                        + (2.2 * Math.log(0.052) * Math.pow(10, -0.43) - 0.1) * Math.log(t));
    }

    @Override
    double[] corners() {
        return new double[] {0, DISC, 6e-3, 9e-3, 15e-3, 25e-3, RING};
    }

    @Override
    long seed() {
        return 31_004;
    }

    /**
     * Derived from the remembered formula by quadrature outside this project with the plain weight θ; the weight
     * sin θ cos θ takes up to 2 θ²/3 = 1.3e-3 of the ring's outermost light, and a little of σ.
     */
    @ParameterizedTest
    @CsvSource({
        "0.02, 0.005813, 2.47929",
        "0.05, 0.043134, 3.46903",
        "0.1, 0.100268, 4.37305",
        "0.2, 0.187142, 5.46956",
        "0.3, 0.274263, 6.57201",
        "0.4, 0.372649, 7.82831"
    })
    void ratioAndSigmaMeetIndependentQuadrature(double asked, double resulting, double sigmaMrad) {
        CircumsolarSun sun = new CircumsolarSun(asked);
        assertEquals(resulting, sun.resultingRatio(), 1e-3 * resulting + 1e-6);
        assertEquals(sigmaMrad, 1e3 * sigma(sun, DISC, sun.largestAngle()), 1e-3 * sigmaMrad);
        assertEquals(sun.resultingRatio(), 1 - sun.cumulative(DISC), 1e-14);
    }

    /** Derived: the radiance at the disc's edge, and the disc's light with the weight θ. */
    @Test
    void discMeetsIndependentQuadrature() {
        assertEquals(0.397159, shape().relativeRadiance(DISC), 1e-6);
        DoubleUnaryOperator light = t -> t * shape().relativeRadiance(1e-3 * t);
        double sum = new IterativeLegendreGaussIntegrator(24, 1e-12, 1e-14)
                .integrate(100_000, light::applyAsDouble, 0, 4.65 - 1e-12);
        assertEquals(9.224740, sum, 1e-6);
    }

    /** Figures of κ and γ derived outside this project: at 10 mrad the radiance is exp(κ + γ ln 10). */
    @ParameterizedTest
    @CsvSource({"0.02, -3.810515, -1.968085", "0.1, 0.538909, -2.516586", "0.4, 1.997951, -2.429529"})
    void ringFallsAsAPower(double asked, double kappa, double gamma) {
        double radiance = Math.exp(kappa + gamma * Math.log(10));
        assertEquals(radiance, new CircumsolarSun(asked).relativeRadiance(0.01), 1e-5 * radiance);
    }

    /** 4 standard errors of a share, false-alarm rate 6e-5. */
    @Test
    void drawsOutsideTheDiscAreTheResultingRatio() {
        CircumsolarSun sun = new CircumsolarSun(0.3);
        int draws = 200_000;
        long outside = new SplittableRandom(31_014)
                .doubles(draws)
                .filter(u -> sun.inverse(u) > DISC)
                .count();
        double p = sun.resultingRatio();
        assertEquals(p, outside / (double) draws, 4 * Math.sqrt(p * (1 - p) / draws));
    }

    /** γ passes −2 between these ratios, where the power law's integral is a logarithm. */
    @Test
    void integralIsSmoothWhereThePowerBecomesALogarithm() {
        double low = 0.01;
        double high = 0.05;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            double gamma = 2.2 * Math.log(0.52 * middle) * Math.pow(middle, 0.43) - 0.1;
            low = gamma > -2 ? middle : low;
            high = gamma > -2 ? high : middle;
        }
        CircumsolarSun sun = new CircumsolarSun(low);
        double mean = 0.5
                * (new CircumsolarSun(low - 1e-6).resultingRatio() + new CircumsolarSun(low + 1e-6).resultingRatio());
        assertEquals(mean, sun.resultingRatio(), 1e-9);
        assertEquals(0.9999, sun.cumulative(sun.inverse(0.9999)), 1e-12);
    }

    @Test
    void resultingRatioRisesOverTheWholeRange() {
        double before = 0;
        for (double asked = 0.01; asked <= 0.6; asked += 0.01) {
            double resulting = new CircumsolarSun(asked).resultingRatio();
            assertTrue(resulting > before && resulting < 1, "asked " + asked);
            before = resulting;
        }
    }

    @Test
    void saysBothRatios() {
        assertEquals("circumsolar, ratio 0.1 asked for, 0.1003 resulting", shape().describe());
    }

    @Test
    void sunsOfOneRatioAreEqual() {
        assertEquals(new CircumsolarSun(0.1), shape());
        assertEquals(new CircumsolarSun(0.1).hashCode(), shape().hashCode());
        assertNotEquals(new CircumsolarSun(0.2), shape());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.0099, 0.61, -1, Double.NaN})
    void refusesARatioTheFormulaIsNotFor(double ratio) {
        assertThrows(IllegalArgumentException.class, () -> new CircumsolarSun(ratio));
    }
}
