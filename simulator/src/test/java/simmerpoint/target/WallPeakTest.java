package simmerpoint.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class WallPeakTest {
    private static FluxMap wall(int columns, int rows, double[] flux, double error) {
        double[] errors = new double[flux.length];
        Arrays.fill(errors, error);
        return new FluxMap(columns, rows, 0.01, 0.01, 0, 0, flux, errors);
    }

    /** Three cells of 900 W/m² across the seam of the unrolled wall, all else dark; errors of 30 leave 30 ÷ √3 of error. */
    @Test
    void theThreeCellsGoRoundTheSeam() {
        double[] flux = new double[8 * 5];
        for (int i : new int[] {7, 0, 1}) {
            flux[i] = 900;
        }
        assertEquals(900, WallPeak.of(wall(8, 5, flux, 0)), 1e-9);
        assertEquals(900 - 30 / Math.sqrt(3), WallPeak.of(wall(8, 5, flux, 30)), 1e-9);
        assertEquals(0, WallPeak.of(wall(8, 5, new double[40], 0)), 0);
    }

    /**
     * An evenly lit wall of 1000 W/m² seen through noise of 300 per cell. Derived: the largest of 2,400 normal deviates lies
     * about 3.4 of them too high, the mean of three 3.4 of 173, and one of these comes off: 1420.
     */
    @Test
    void noiseMakesLessOfAHotSpot() {
        Random random = new Random(7);
        double[] flux = new double[120 * 20];
        for (int k = 0; k < flux.length; k++) {
            flux[k] = 1000 + 300 * random.nextGaussian();
        }
        FluxMap wall = wall(120, 20, flux, 300);
        assertTrue(wall.largest() > 1800, "the largest cell: " + wall.largest());
        assertEquals(1420, WallPeak.of(wall), 150);
    }
}
