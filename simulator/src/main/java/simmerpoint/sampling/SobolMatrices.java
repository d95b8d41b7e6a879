package simmerpoint.sampling;

/**
 * Generator matrices of the Sobol' sequence in a few dimensions, with as many binary digits as a {@code long} holds.
 * Column c of a matrix is the direction number of index bit c, its first digit in the highest bit.
 *
 * <p>Source: I. M. Sobol' 1967, USSR Comput. Math. Math. Phys. 7(4) 86-112; primitive polynomials and initial numbers
 * of S. Joe and F. Y. Kuo 2008, SIAM J. Sci. Comput. 30, 2635-2654 (their "new-joe-kuo-6" set, first eight dimensions).
 */
final class SobolMatrices {
    /** Digits kept of every coordinate. */
    static final int DIGITS = 64;

    /** Number of dimensions available. */
    static final int DIMENSIONS = 8;

    /** Degree, inner coefficients of the polynomial, initial numbers; the first dimension needs none. */
    private static final int[][] JOE_KUO = {
        {1, 0, 1},
        {2, 1, 1, 3},
        {3, 1, 1, 3, 1},
        {3, 2, 1, 1, 1},
        {4, 1, 1, 1, 3, 3},
        {4, 4, 1, 3, 5, 13},
        {5, 2, 1, 1, 5, 5, 17}
    };

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
