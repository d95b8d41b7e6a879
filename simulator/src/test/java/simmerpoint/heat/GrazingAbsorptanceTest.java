package simmerpoint.heat;

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
        assertEquals(0.93, new SurfaceOptics(0.93, 0.9).absorbedShare(1), 1e-12);
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

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> GrazingAbsorptance.relativeAbsorptance(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> GrazingAbsorptance.relativeAbsorptance(-0.1));
    }
}
