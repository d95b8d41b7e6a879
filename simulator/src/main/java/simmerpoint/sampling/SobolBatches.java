package simmerpoint.sampling;

/** Aligned batches of points of one block, one array per coordinate. Not thread-safe. */
public final class SobolBatches {
    private static final double TO_UNIT = 0x1p-53;
    private static final double HALF = 0x1p-54;

    private final ScrambledSobol.Block block;
    private final int length;
    private final long[][] patterns;
    private final long[] base;
    private long baseBatch = -1;

    /**
     * Batches of {@code length} points.
     *
     * @param sobol where the points come from
     * @param block of it
     * @param length a power of two; reduced to the block's size if that is less
     */
    public SobolBatches(ScrambledSobol sobol, ScrambledSobol.Block block, int length) {
        if (!(length > 0 && Integer.bitCount(length) == 1)) {
            throw new IllegalArgumentException("batch length " + length + " is no power of two");
        }
        this.block = block;
        this.length = (int) Math.min(length, block.size());
        patterns = new long[sobol.dimensions()][];
        base = new long[patterns.length];
        for (int d = 0; d < patterns.length; d++) {
            patterns[d] = block.pattern(d, this.length);
        }
    }

    /** Points per batch. */
    public int length() {
        return length;
    }

    /** Number of batches in the block. */
    public long batches() {
        return block.size() / length;
    }

    /**
     * Writes coordinate {@code d} of batch {@code batch} into {@code out}: {@link #length()} numbers above 0 and below 1,
     * multiples of 2^−53 plus a half.
     */
    public void fill(int d, long batch, double[] out) {
        if (batch != baseBatch) {
            for (int c = 0; c < base.length; c++) {
                base[c] = block.digits(c, batch * length);
            }
            baseBatch = batch;
        }
        long first = base[d];
        long[] pattern = patterns[d];
        for (int k = 0; k < length; k++) {
            out[k] = ((first ^ pattern[k]) >>> 11) * TO_UNIT + HALF;
        }
    }
}
