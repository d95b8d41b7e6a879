package simmerpoint.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class MonotoneCubicTest {
    private static double[] grid(int n, double from, double to) {
        double[] x = new double[n];
        Arrays.setAll(x, k -> from + k * (to - from) / (n - 1));
        return x;
    }

    @Test
    void goesThroughItsPointsAndIsLevelBeyond() {
        double[] x = {-1, 0, 0.5, 3};
        double[] y = {2, 5, 5, -1};
        MonotoneCubic curve = new MonotoneCubic(x, y);
        for (int k = 0; k < x.length; k++) {
            assertEquals(y[k], curve.at(x[k]), 1e-12);
        }
        assertEquals(2, curve.at(-7), 0);
        assertEquals(-1, curve.at(7), 0);
        assertEquals(4, new MonotoneCubic(new double[] {1}, new double[] {4}).at(0), 0);
    }

    @Test
    void straightLinesStayStraight() {
        MonotoneCubic curve = new MonotoneCubic(new double[] {0, 1, 3, 4}, new double[] {1, 3, 7, 9});
        for (double x : grid(41, 0, 4)) {
            assertEquals(1 + 2 * x, curve.at(x), 1e-12);
        }
    }

    @Test
    void neverSwingsBeyondTwoNeighbours() {
        double[] x = {0, 1, 2, 3, 4, 5};
        double[] y = {0, 0, 1, 1, 0.2, 7};
        MonotoneCubic curve = new MonotoneCubic(x, y);
        for (double at : grid(501, 0, 5)) {
            int k = Math.min(4, (int) at);
            double value = curve.at(at);
            assertTrue(
                    value >= Math.min(y[k], y[k + 1]) - 1e-12 && value <= Math.max(y[k], y[k + 1]) + 1e-12, "at " + at);
        }
    }

    /** Closed form: a rising sine, 21 points over a quarter turn. Third order where it is steep; where it
     * levels off, in steps of h, the last two slopes are off by h/4 and 3h/8, and the curve by at most 4h/27 times their
     * sum (derived here): 5.8e-4. */
    @Test
    void isCloseToASmoothFunction() {
        double[] x = grid(21, 0, Math.PI / 2);
        MonotoneCubic curve =
                new MonotoneCubic(x, Arrays.stream(x).map(Math::sin).toArray());
        for (double at : grid(333, 0, Math.PI / 2)) {
            assertEquals(Math.sin(at), curve.at(at), at < 1.2 ? 1e-4 : 5.8e-4, "at " + at);
        }
    }

    @Test
    void refusesPointsThatDoNotMatch() {
        assertThrows(IllegalArgumentException.class, () -> new MonotoneCubic(new double[2], new double[3]));
        assertThrows(IllegalArgumentException.class, () -> new MonotoneCubic(new double[0], new double[0]));
    }
}
