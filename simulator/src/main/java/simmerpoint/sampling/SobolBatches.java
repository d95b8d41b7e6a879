package simmerpoint.sampling;

/** Writes aligned runs of points of one block into arrays, a coordinate at a time. Not for several threads at once. */
public final class SobolBatches {
    private static final double TO_UNIT = 0x1p-53;
    private static final double HALF = 0x1p-54;

    private final ScrambledSobol.Block block;
    private final int length;
    private final long[][] patterns;
    private final long[] base;
    private long baseRun = -1;

    /**
     * Runs of {@code length} points.
     *
     * @param sobol where the points come from
     * @param block of it
     * @param length a power of two; shortened to the block's size if that is less
     */
    public SobolBatches(ScrambledSobol sobol, ScrambledSobol.Block block, int length) {
        if (!(length > 0 && Integer.bitCount(length) == 1)) {
            throw new IllegalArgumentException("run length " + length + " is no power of two");
        }
        this.block = block;
        this.length = (int) Math.min(length, block.size());
        patterns = new long[sobol.dimensions()][];
        base = new long[patterns.length];
        for (int d = 0; d < patterns.length; d++) {
            patterns[d] = block.pattern(d, this.length);
        }
    }

    /** Points per run. */
    public int length() {
        return length;
    }

    /** Number of runs in the block. */
    public long runs() {
        return block.size() / length;
    }

    /**
     * Writes coordinate {@code d} of run {@code run} into {@code out}: {@link #length()} numbers above 0 and below 1,
     * multiples of 2^−53 plus a half.
     */
    public void fill(int d, long run, double[] out) {
        if (run != baseRun) {
            for (int c = 0; c < base.length; c++) {
                base[c] = block.digits(c, run * length);
            }
            baseRun = run;
        }
        long first = base[d];
        long[] pattern = patterns[d];
        for (int k = 0; k < length; k++) {
            out[k] = ((first ^ pattern[k]) >>> 11) * TO_UNIT + HALF;
        }
    }
}
