package simmerpoint.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScrambledSobolTest {
    private static final int DIMENSIONS = 8;

    /** All points of a block, one row per coordinate. */
    private static double[][] points(ScrambledSobol sobol, int firstBits, int number, int run) {
        ScrambledSobol.Block block = sobol.block(firstBits, number);
        SobolBatches runs = new SobolBatches(sobol, block, run);
        double[][] points = new double[sobol.dimensions()][(int) block.size()];
        double[] some = new double[runs.length()];
        for (int k = 0; k < runs.batches(); k++) {
            for (int d = 0; d < points.length; d++) {
                runs.fill(d, k, some);
                System.arraycopy(some, 0, points[d], k * runs.length(), runs.length());
            }
        }
        return points;
    }

    /** Every block, not only the first: each of its 2^m intervals of every coordinate holds one point. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void everyIntervalOfEveryCoordinateHoldsOnePoint(int number) {
        double[][] points = points(new ScrambledSobol(DIMENSIONS, 5, 3), 8, number, 64);
        for (int d = 0; d < DIMENSIONS; d++) {
            int n = points[d].length;
            boolean[] taken = new boolean[n];
            for (double x : points[d]) {
                assertTrue(x > 0 && x < 1, "not inside: " + x);
                int at = (int) (x * n);
                assertTrue(!taken[at], "two points in an interval of a coordinate");
                taken[at] = true;
            }
        }
    }

    /** The first two coordinates make a (0, m, 2)-net (Sobol' 1967, from memory): one point in every box of area 2^-m. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2})
    void firstTwoCoordinatesAreANet(int number) {
        double[][] points = points(new ScrambledSobol(DIMENSIONS, 77, 0), 9, number, 128);
        int n = points[0].length;
        for (int wide = 1; wide <= n; wide *= 2) {
            int high = n / wide;
            boolean[] taken = new boolean[n];
            for (int i = 0; i < n; i++) {
                int column = (int) (points[0][i] * wide);
                int box = column * high + (int) (points[1][i] * high);
                assertTrue(!taken[box], "two points in a box of " + wide + " columns");
                taken[box] = true;
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 5})
    void firstCoordinateAscendsWithinABlock(int number) {
        double[] first = points(new ScrambledSobol(3, 1, 7), 7, number, 32)[0];
        for (int i = 1; i < first.length; i++) {
            assertTrue(first[i] > first[i - 1], "falls at " + i);
        }
    }

    @Test
    void blocksTogetherAreTheWhole() {
        ScrambledSobol sobol = new ScrambledSobol(DIMENSIONS, 12, 4);
        Set<String> parts = new HashSet<>();
        for (int number = 0; number <= 4; number++) {
            addAll(parts, points(sobol, 6, number, 16));
        }
        Set<String> whole = new HashSet<>();
        addAll(whole, points(sobol, 10, 0, 128));
        assertEquals(1024, whole.size());
        assertEquals(whole, parts);
    }

    private static void addAll(Set<String> to, double[][] points) {
        for (int i = 0; i < points[0].length; i++) {
            StringBuilder all = new StringBuilder();
            for (double[] coordinate : points) {
                all.append(coordinate[i]).append(' ');
            }
            to.add(all.toString());
        }
    }

    @Test
    void lengthOfARunChangesNothing() {
        ScrambledSobol sobol = new ScrambledSobol(DIMENSIONS, 12, 4);
        double[][] wanted = points(sobol, 9, 2, 1);
        for (int run : new int[] {2, 64, 512, 4096}) {
            assertTrue(Arrays.deepEquals(wanted, points(sobol, 9, 2, run)), "run of " + run);
        }
    }

    /**
     * The single point of a block of one in many replicates, 10 × 10 boxes for each pair of neighbouring coordinates:
     * seven chi-square tests of 99 degrees of freedom, at 1e-4 on each side, together a false-alarm rate of 0.0014.
     */
    @Test
    void onePointIsUniformOverReplicates() {
        int replicates = 1000;
        int[][] counts = new int[DIMENSIONS - 1][100];
        for (int r = 0; r < replicates; r++) {
            ScrambledSobol.Block block = new ScrambledSobol(DIMENSIONS, 31, r).block(0, 1);
            for (int d = 0; d + 1 < DIMENSIONS; d++) {
                counts[d][10 * (int) (10 * unit(block.digits(d, 0))) + (int) (10 * unit(block.digits(d + 1, 0)))]++;
            }
        }
        for (int d = 0; d < counts.length; d++) {
            assertUniform("coordinates " + d + " and " + (d + 1), counts[d]);
        }
    }

    /** Point r of replicate r, for 1000 of them: one chi-square test per coordinate, at 1e-4 on each side. */
    @Test
    void pointsOfABlockAreUniform() {
        int[][] counts = new int[DIMENSIONS][100];
        for (int r = 0; r < 1000; r++) {
            ScrambledSobol.Block block = new ScrambledSobol(DIMENSIONS, 32, r).block(12, 0);
            for (int d = 0; d < DIMENSIONS; d++) {
                counts[d][(int) (100 * unit(block.digits(d, r)))]++;
            }
        }
        for (int d = 1; d < counts.length; d++) {
            assertUniform("coordinate " + d, counts[d]);
        }
    }

    private static double unit(long digits) {
        return (digits >>> 11) * 0x1p-53;
    }

    /** 300 integrals each of five replicates: four correlations, each within 4 standard errors of 0 (1 in 4,000). */
    @Test
    void replicatesAreUncorrelated() {
        int seeds = 300;
        double[][] mean = new double[5][seeds];
        for (int s = 0; s < seeds; s++) {
            for (int r = 0; r < mean.length; r++) {
                double[][] p = points(new ScrambledSobol(3, s, r), 5, 0, 32);
                for (int i = 0; i < p[0].length; i++) {
                    mean[r][s] += p[0][i] * p[0][i] + p[0][i] * p[1][i] + Math.exp(p[1][i] * p[2][i]);
                }
            }
        }
        for (int r = 1; r < mean.length; r++) {
            double c = new PearsonsCorrelation().correlation(mean[0], mean[r]);
            assertEquals(0, c, 4 / Math.sqrt(seeds), "replicates 0 and " + r);
        }
    }

    /**
     * Points 0 and 1 differ by one column of the scramble. Held against that of later replicates, moved by up to three
     * digits either way, they agree in half of their digits: 15 pairs × 54 digits, within 5 standard deviations (0.5/√n);
     * false alarm below 1e-4 for all 112 comparisons. A stream of random numbers that merely starts one number later in
     * the next replicate agrees in all.
     */
    @Test
    void scramblesOfReplicatesShareNoDigits() {
        int replicates = 16;
        for (int d = 0; d < 4; d++) {
            for (int later = 1; later <= 4; later++) {
                for (int moved = -3; moved <= 3; moved++) {
                    int agree = 0;
                    int all = 0;
                    for (int r = 0; r + later < replicates; r++) {
                        long a = column(d, r) << 5;
                        long b = column(d, r + later) << (5 + moved);
                        agree += Long.bitCount(~(a ^ b) >>> 10);
                        all += 54;
                    }
                    double share = (double) agree / all;
                    assertEquals(0.5, share, 2.5 / Math.sqrt(all), "coordinate " + d + ", replicate +" + later);
                }
            }
        }
    }

    private static long column(int d, int replicate) {
        ScrambledSobol sobol = new ScrambledSobol(DIMENSIONS, 1, replicate);
        return sobol.block(0, 0).digits(d, 0) ^ sobol.block(0, 1).digits(d, 0);
    }

    @Test
    void seedsAndReplicatesDiffer() {
        Set<Double> first = new HashSet<>();
        for (int seed = -2; seed <= 2; seed++) {
            for (int r = 0; r < 16; r++) {
                first.add(points(new ScrambledSobol(2, seed, r), 0, 0, 1)[1][0]);
            }
        }
        assertEquals(80, first.size());
    }

    @Test
    void refusesWhatItCannotDo() {
        assertThrows(IllegalArgumentException.class, () -> new ScrambledSobol(SobolMatrices.DIMENSIONS + 1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new ScrambledSobol(0, 1, 0));
        ScrambledSobol sobol = new ScrambledSobol(2, 1, 0);
        assertThrows(IllegalArgumentException.class, () -> sobol.block(44, 0));
        assertThrows(IllegalArgumentException.class, () -> sobol.block(6, -1));
        assertThrows(IllegalArgumentException.class, () -> new SobolBatches(sobol, sobol.block(6, 0), 48));
    }

    /** Single precision says the first 23 digits. */
    @Test
    void singlePrecision() {
        ScrambledSobol sobol = new ScrambledSobol(DIMENSIONS, 5, 3);
        SobolBatches batches = new SobolBatches(sobol, sobol.block(14, 0), 128);
        double[] full = new double[128];
        float[] single = new float[128];
        for (long k = 0; k < batches.batches(); k++) {
            batches.fill(2, k, full);
            batches.fill(2, k, single);
            for (int i = 0; i < full.length; i++) {
                assertEquals(full[i], single[i], 0x1p-23);
            }
        }
    }

    /**
     * Each 64th of the square of a point's first digits and its batch's trailing digits holds its share of 4096 scrambles, for the point
     * the digits are taken from and for another.
     */
    @Test
    void trailingDigitsDoNotDependOnTheFirst() {
        int[] same = new int[64];
        int[] other = new int[64];
        float[] single = new float[128];
        for (int copy = 0; copy < 4096; copy++) {
            ScrambledSobol sobol = new ScrambledSobol(DIMENSIONS, 5, copy);
            SobolBatches batches = new SobolBatches(sobol, sobol.block(9, 0), 128);
            batches.fill(2, 2, single);
            int column = (int) (8 * batches.trailingDigits(2, 2));
            same[8 * (int) (8 * single[0]) + column]++;
            other[8 * (int) (8 * single[77]) + column]++;
        }
        assertUniform("first and trailing digits of one point", same);
        assertUniform("first and trailing digits of two points", other);
    }

    private static double chiSquared(int[] counts) {
        double expected = Arrays.stream(counts).average().orElseThrow();
        return Arrays.stream(counts)
                .mapToDouble(c -> (c - expected) * (c - expected) / expected)
                .sum();
    }

    private static void assertUniform(String what, int[] counts) {
        double chi2 = chiSquared(counts);
        double p = new ChiSquaredDistribution(counts.length - 1.0).cumulativeProbability(chi2);
        assertTrue(p > 1e-4 && p < 1 - 1e-4, () -> what + ": chi-square " + chi2 + " from " + Arrays.toString(counts));
    }
}
