package simmerpoint.sampling;

/**
 * Exclusive-or patterns of aligned batches of one block's points: digits of point j0 + k = digits of j0 ^ pattern[k]. Not modified
 * once made.
 */
final class SobolPatterns {
    private final int length;
    private final long[][] all;
    private final int[][] leading;

    /**
     * Lays out the patterns.
     *
     * @param steps by coordinate what each binary digit of a point's number adds to its digits
     * @param length of a batch, a power of two
     */
    SobolPatterns(long[][] steps, int length) {
        this.length = length;
        all = new long[steps.length][length];
        leading = new int[steps.length][length];
        for (int d = 0; d < steps.length; d++) {
            for (int k = 1; k < length; k++) {
                all[d][k] = all[d][k & (k - 1)] ^ steps[d][Integer.numberOfTrailingZeros(k)];
                leading[d][k] = (int) (all[d][k] >>> 32);
            }
        }
    }

    /** Points per batch. */
    int length() {
        return length;
    }

    /** All digits of coordinate {@code d}. */
    long[] digits(int d) {
        return all[d];
    }

    /** The first 32 digits of coordinate {@code d}. */
    int[] leadingDigits(int d) {
        return leading[d];
    }
}
