package simmerpoint.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GrazingAbsorptanceTest {
    @Test
    void squareOnItIsOneAndGrazingNought() {
        assertEquals(1, GrazingAbsorptance.relativeAbsorptance(1), 1e-12);
        assertEquals(0, GrazingAbsorptance.relativeAbsorptance(0), 1e-12);
    }

    /** Brewster: at tan i = 1.5 only one polarisation is mirrored, half of ((1.5² − 1)/(1.5² + 1))² (any optics book). */
    @Test
    void brewstersAngleMirrorsHalfOfOnePolarisation() {
        double cos = Math.cos(Math.atan(1.5));
        double mirrored = Math.pow(1.25 / 3.25, 2) / 2;
        assertEquals((1 - mirrored) / 0.96, GrazingAbsorptance.relativeAbsorptance(cos), 1e-12);
    }

    /**
     * Measured flat black: the polynomial in degrees of Duffie and Beckman, section 4.11 (from memory), valid from 0 to
     * 80°; within 0.03.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 15, 30, 45, 60, 70, 75, 80})
    void isNearMeasuredFlatBlack(double degrees) {
        double[] c = {1, -1.5879e-3, 2.7314e-4, -2.3026e-5, 9.0244e-7, -1.8e-8, 1.7734e-10, -6.9937e-13};
        double measured = 0;
        for (int k = c.length - 1; k >= 0; k--) {
            measured = measured * degrees + c[k];
        }
        double ours = GrazingAbsorptance.relativeAbsorptance(Math.cos(Math.toRadians(degrees)));
        assertEquals(measured, ours, 0.03, "at " + degrees + "°");
    }

    @Test
    void fallsAllTheWay() {
        double before = 0;
        for (int k = 0; k <= 100; k++) {
            double now = GrazingAbsorptance.relativeAbsorptance(k / 100.0);
            assertTrue(now >= before, "at cosine " + k / 100.0);
            before = now;
        }
    }

    /** Fresnel's reflectances by their angles: sin²(i − t)/sin²(i + t) and tan²(i − t)/tan²(i + t) (any optics book). */
    @ParameterizedTest
    @ValueSource(doubles = {5, 25, 50, 70, 85, 89})
    void isFresnelsLaw(double degrees) {
        double i = Math.toRadians(degrees);
        double t = Math.asin(Math.sin(i) / 1.5);
        double across = Math.pow(Math.sin(i - t) / Math.sin(i + t), 2);
        double along = Math.pow(Math.tan(i - t) / Math.tan(i + t), 2);
        double expected = (1 - (across + along) / 2) / 0.96;
        assertEquals(expected, GrazingAbsorptance.relativeAbsorptance(Math.cos(i)), 1e-12);
    }

    @Test
    void manyAtOnceAreTheSame() {
        int n = 101;
        double[] cosines = new double[n];
        float[] singles = new float[n];
        for (int k = 0; k < n; k++) {
            cosines[k] = k / 100.0;
            singles[k] = (float) -cosines[k];
        }
        double[] out = new double[n];
        float[] singleOut = new float[n];
        GrazingAbsorptance.fill(cosines, n, out);
        GrazingAbsorptance.fill(singles, n, singleOut);
        for (int k = 0; k < n; k++) {
            assertEquals(GrazingAbsorptance.relativeAbsorptance(cosines[k]), out[k], 1e-15);
            assertEquals(out[k], singleOut[k], 1e-6);
        }
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> GrazingAbsorptance.relativeAbsorptance(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> GrazingAbsorptance.relativeAbsorptance(-0.1));
    }
}
