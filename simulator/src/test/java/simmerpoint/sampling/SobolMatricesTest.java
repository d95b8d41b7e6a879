package simmerpoint.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SobolMatricesTest {
    private static final double PER_DIGIT = 0x1p-64;

    /** Coordinate {@code d} of the point whose index has the given binary digits. */
    private static double coordinate(int d, int index) {
        long[] columns = SobolMatrices.columns(d, 30);
        long x = 0;
        for (int c = 0; c < columns.length; c++) {
            x ^= ((index >>> c) & 1) == 1 ? columns[c] : 0;
        }
        return (x >>> 11) * 0x1p-53 + (x & 0x7FF) * PER_DIGIT;
    }

    /** Commons Math walks the same points in the order of Gray's code; every digit must agree. */
    @Test
    void pointsAreThoseOfCommonsMath() {
        SobolSequenceGenerator theirs = new SobolSequenceGenerator(SobolMatrices.DIMENSIONS);
        for (int n = 0; n < 4096; n++) {
            double[] point = theirs.nextVector();
            for (int d = 0; d < point.length; d++) {
                assertEquals(point[d], coordinate(d, n ^ (n >>> 1)), 0, "point " + n + ", coordinate " + d);
            }
        }
    }

    /** Far along, where the high columns matter. */
    @Test
    void latePointsAreThoseOfCommonsMath() {
        SobolSequenceGenerator theirs = new SobolSequenceGenerator(SobolMatrices.DIMENSIONS);
        for (int n : new int[] {1_000_003, 123_456_789, 536_870_911}) {
            double[] point = theirs.skipTo(n);
            for (int d = 0; d < point.length; d++) {
                assertEquals(point[d], coordinate(d, n ^ (n >>> 1)), 0, "point " + n + ", coordinate " + d);
            }
        }
    }

    /** The first eight points of two coordinates, as SciPy's generator (Joe and Kuo's numbers too) gives them. */
    @Test
    void firstEightPoints() {
        Set<String> wanted = Set.of(
                "0.0 0.0",
                "0.5 0.5",
                "0.75 0.25",
                "0.25 0.75",
                "0.375 0.375",
                "0.875 0.875",
                "0.625 0.125",
                "0.125 0.625");
        Set<String> got = IntStream.range(0, 8)
                .mapToObj(i -> coordinate(0, i) + " " + coordinate(1, i))
                .collect(Collectors.toSet());
        assertEquals(wanted, got);
    }

    /** Points in the quarter circle, counted outside this project with SciPy's generator: exact numbers. */
    @ParameterizedTest
    @CsvSource({"10, 806", "12, 3215", "14, 12873", "16, 51475"})
    void quarterCircle(int bits, int inside) {
        long count = IntStream.range(0, 1 << bits)
                .filter(i -> Math.hypot(coordinate(0, i), coordinate(1, i)) < 1)
                .count();
        assertEquals(inside, count);
    }

    /** Mean of x·y less a quarter, from the same place (three digits given there): falls like one over the number. */
    @ParameterizedTest
    @CsvSource({"10, -4.84e-4", "12, -1.18e-4", "14, -2.67e-5", "16, -7.63e-6"})
    void meanProduct(int bits, double offQuarter) {
        double mean = IntStream.range(0, 1 << bits)
                .mapToDouble(i -> coordinate(0, i) * coordinate(1, i))
                .average()
                .orElseThrow();
        assertEquals(offQuarter, mean - 0.25, 0.005 * Math.abs(offQuarter));
    }
}
