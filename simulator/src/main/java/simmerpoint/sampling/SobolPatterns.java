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
                int last = Integer.numberOfTrailingZeros(k);
                all[d][k] = all[d][k & (k - 1)] ^ steps[d][last] >>> 12;
                leading[d][k] = leading[d][k & (k - 1)] ^ (int) (steps[d][last] >>> 41);
            }
        }
    }

    /** Points per batch. */
    int length() {
        return length;
    }

    /** Of coordinate {@code d}, as the 52 digits of a number of double precision after its first. */
    long[] digits(int d) {
        return all[d];
    }

    /** The same as the 23 digits of a number of single precision. */
    int[] leadingDigits(int d) {
        return leading[d];
    }
}
