package simmerpoint.tracing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A change of variables: integrals stay, and borders lie at whole parts. */
class EvenRingsTest {
    /** Borders of a hub of 6 cm and six rings as wide as each other in a dish of 1.2 m: squares of radii, worked by hand. */
    private static final double[] BORDERS = {
        0.03 * 0.03 / 0.36,
        0.125 * 0.125 / 0.36,
        0.22 * 0.22 / 0.36,
        0.315 * 0.315 / 0.36,
        0.41 * 0.41 / 0.36,
        0.505 * 0.505 / 0.36
    };

    private static final int N = 1 << 16;

    private static double[] middles() {
        return IntStream.range(0, N).mapToDouble(k -> (k + 0.5) / N).toArray();
    }

    /** ∫ x^p dx = 1/(p + 1), textbook; the middle rule on linear pieces of 512 steps each is good to 1e-7. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 5})
    void integralsStay(int power) {
        double[] x = middles();
        float[] scale = new float[N];
        new EvenRings(BORDERS).spread(x, N, scale);
        double sum = 0;
        for (int k = 0; k < N; k++) {
            assertTrue(x[k] > 0 && x[k] < 1 && (k == 0 || x[k] > x[k - 1]));
            sum += scale[k] * Math.pow(x[k], power) / N;
        }
        assertEquals(1.0 / (power + 1), sum, 1e-7);
    }

    /** Any 128 numbers, one in each 128th, give each ring the same number of places: nearest to 128 times its share, but one for the hub. */
    @Test
    void everyRingHasItsNumber() {
        double[] borders = BORDERS;
        int[] expected = {1, 5, 11, 18, 25, 31, 37};
        for (double within : new double[] {1e-9, 0.3, 1 - 1e-9}) {
            double[] x =
                    IntStream.range(0, 128).mapToDouble(k -> (k + within) / 128).toArray();
            new EvenRings(borders).spread(x, 128, new float[128]);
            int[] found = new int[borders.length + 1];
            for (double place : x) {
                int ring = 0;
                while (ring < borders.length && place >= borders[ring]) {
                    ring++;
                }
                found[ring]++;
            }
            assertArrayEquals(expected, found);
        }
    }

    @Test
    void noRingsAndVeryManyStayAsTheyAre() {
        assertTrue(new EvenRings(new double[0]).none());
        assertTrue(new EvenRings(
                        IntStream.range(1, 100).mapToDouble(k -> k / 100.0).toArray())
                .none());
        assertFalse(new EvenRings(new double[] {0.5}).none());
    }
}
