package simmerpoint.sampling;

/**
 * Generator matrices of the Sobol' sequence in some dimensions, with as many binary digits as a {@code long} holds.
 * Column c of a matrix is the direction number of index bit c, its first digit in the highest bit.
 *
 * <p>Source: I. M. Sobol' 1967, USSR Comput. Math. Math. Phys. 7(4) 86-112; primitive polynomials and initial numbers
 * of S. Joe and F. Y. Kuo 2008, SIAM J. Sci. Comput. 30, 2635-2654 (their "new-joe-kuo-6" set, first 32 dimensions).
 */
final class SobolMatrices {
    /** Digits kept of every coordinate. */
    static final int DIGITS = 64;

    /** Degree, inner coefficients of the polynomial, initial numbers; the first dimension needs none. */
    private static final int[][] JOE_KUO = {
        {1, 0, 1},
        {2, 1, 1, 3},
        {3, 1, 1, 3, 1},
        {3, 2, 1, 1, 1},
        {4, 1, 1, 1, 3, 3},
        {4, 4, 1, 3, 5, 13},
        {5, 2, 1, 1, 5, 5, 17},
        {5, 4, 1, 1, 5, 5, 5},
        {5, 7, 1, 1, 7, 11, 19},
        {5, 11, 1, 1, 5, 1, 1},
        {5, 13, 1, 1, 1, 3, 11},
        {5, 14, 1, 3, 5, 5, 31},
        {6, 1, 1, 3, 3, 9, 7, 49},
        {6, 13, 1, 1, 1, 15, 21, 21},
        {6, 16, 1, 3, 1, 13, 27, 49},
        {6, 19, 1, 1, 1, 15, 7, 5},
        {6, 22, 1, 3, 1, 15, 13, 25},
        {6, 25, 1, 1, 5, 5, 19, 61},
        {7, 1, 1, 3, 7, 11, 23, 15, 103},
        {7, 4, 1, 3, 7, 13, 13, 15, 69},
        {7, 7, 1, 1, 3, 13, 7, 35, 63},
        {7, 8, 1, 3, 5, 9, 1, 25, 53},
        {7, 14, 1, 3, 1, 13, 9, 35, 107},
        {7, 19, 1, 3, 1, 5, 27, 61, 31},
        {7, 21, 1, 1, 5, 11, 19, 41, 61},
        {7, 28, 1, 3, 5, 3, 3, 13, 69},
        {7, 31, 1, 1, 7, 13, 1, 19, 1},
        {7, 32, 1, 3, 7, 5, 13, 19, 59},
        {7, 37, 1, 1, 3, 9, 25, 29, 41},
        {7, 41, 1, 3, 5, 13, 23, 1, 55},
        {7, 42, 1, 3, 7, 3, 13, 59, 17}
    };

    /** Number of dimensions available. */
    static final int DIMENSIONS = JOE_KUO.length + 1;

    private SobolMatrices() {}

    /** The first {@code columns} direction numbers of dimension {@code d} (0-based). */
    static long[] columns(int d, int columns) {
        long[] v = new long[columns];
        if (d == 0) {
            for (int c = 0; c < columns; c++) {
                v[c] = 1L << (DIGITS - 1 - c);
            }
            return v;
        }
        int[] row = JOE_KUO[d - 1];
        int degree = row[0];
        for (int c = 0; c < columns; c++) {
            v[c] = c < degree ? (long) row[2 + c] << (DIGITS - 1 - c) : next(v, c, degree, row[1]);
        }
        return v;
    }

    private static long next(long[] v, int c, int degree, int inner) {
        long x = v[c - degree] ^ (v[c - degree] >>> degree);
        for (int k = 1; k < degree; k++) {
            if (((inner >>> (degree - 1 - k)) & 1) == 1) {
                x ^= v[c - k];
            }
        }
        return x;
    }
}
