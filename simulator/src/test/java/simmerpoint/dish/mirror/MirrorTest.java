package simmerpoint.dish.mirror;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shares of light add up, and every figure is held in its range. */
class MirrorTest {
    private static final Mirror SOME = new Mirror("some", 0.8, 0.1, 0.004, 0.002, 0.3, 0.02, 0.05, 0.006);

    @Test
    void everyRayIsLostScatteredOrReflected() {
        // Of 1, dust takes 0.05; of the 0.95 left the mirror takes a fifth; of the 0.76 left a tenth is diffuse.
        assertEquals(0.05 + 0.95 * 0.2, SOME.lostShare(), 1e-15);
        assertEquals(0.076, SOME.scatteredShare(), 1e-15);
        assertEquals(0.684, SOME.reflectedShare(), 1e-15);
        assertEquals(1, SOME.lostShare() + SOME.scatteredShare() + SOME.reflectedShare(), 1e-15);
    }

    @Test
    void anotherFigureLeavesTheRest() {
        assertEquals(new Mirror("some", 0.7, 0.1, 0.004, 0.002, 0.3, 0.02, 0.05, 0.006), SOME.withReflectance(0.7));
        assertEquals(new Mirror("some", 0.8, 0.2, 0.004, 0.002, 0.3, 0.02, 0.05, 0.006), SOME.withScattered(0.2));
        assertEquals(new Mirror("some", 0.8, 0.1, 0.005, 0.002, 0.3, 0.02, 0.05, 0.006), SOME.withSlopeError(0.005));
        assertEquals(new Mirror("some", 0.8, 0.1, 0.004, 0.003, 0.3, 0.02, 0.05, 0.006), SOME.withBeamSpread(0.003));
        assertEquals(new Mirror("some", 0.8, 0.1, 0.004, 0.002, 0.4, 0.02, 0.05, 0.006), SOME.withWideShare(0.4));
        assertEquals(new Mirror("some", 0.8, 0.1, 0.004, 0.002, 0.3, 0.02, 0.06, 0.006), SOME.withDust(0.06));
        assertEquals(new Mirror("some", 0.8, 0.1, 0.004, 0.002, 0.3, 0.02, 0.05, 0.007), SOME.withPanelTilt(0.007));
    }

    /** Which figure, its least, its most, and whether the most itself is allowed. */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 1, true",
        "1, 0, 1, true",
        "2, 0, 0.2, true",
        "3, 0, 0.2, true",
        "4, 0, 1, true",
        "5, 0, 0.2, true",
        "6, 0, 1, false",
        "7, 0, 0.2, true"
    })
    void figuresOutsideTheirRangeAreRefused(int figure, double least, double most, boolean closed) {
        assertDoesNotThrow(() -> with(figure, least));
        assertThrows(IllegalArgumentException.class, () -> with(figure, least - 1e-9));
        assertThrows(IllegalArgumentException.class, () -> with(figure, most + 1e-9));
        assertThrows(IllegalArgumentException.class, () -> with(figure, Double.NaN));
        if (closed) {
            assertDoesNotThrow(() -> with(figure, most));
        } else {
            assertThrows(IllegalArgumentException.class, () -> with(figure, most));
        }
    }

    private static Mirror with(int figure, double value) {
        double[] f = {0.8, 0.1, 0.004, 0.002, 0.3, 0.02, 0.05, 0.006};
        f[figure] = value;
        return new Mirror("some", f[0], f[1], f[2], f[3], f[4], f[5], f[6], f[7]);
    }
}
