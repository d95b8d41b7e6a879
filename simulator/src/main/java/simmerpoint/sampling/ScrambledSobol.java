package simmerpoint.sampling;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * One independently scrambled copy of the Sobol' sequence. The scramble multiplies every generator matrix by a random
 * lower triangular matrix and adds a random digital shift; each point is then uniform on the unit cube, a power-of-two
 * block stays a net, and the variance of a mean over a block is that of full nested scrambling, at the cost of one
 * exclusive-or per coordinate.
 *
 * <p>Source: J. Matoušek 1998, J. Complexity 14, 527-556 (random linear scrambling); A. B. Owen 2003, ACM TOMACS 13,
 * 363-378 (its variance). Both from memory.
 *
 * <p>Points come in blocks: block 0 holds the first 2^m points, block k ≥ 1 the next 2^(m+k−1), so every block doubles
 * the number of points. Within a block they are in ascending order of the first coordinate, so that a mapping of that
 * coordinate to panels accesses memory sequentially; see {@link Block}.
 */
public final class ScrambledSobol {
    private static final int MAX_BITS = 44;

    /** The replicates laid out last: studies trace many scenes with the same samples. */
    private static volatile Copies last = new Copies(0, 0, List.of());

    private record Copies(int dimensions, long seed, List<ScrambledSobol> all) {}

    private final long[][] columns;

    /** The block asked for last: every trace asks for the same ones again. */
    private volatile Block lastBlock;

    private final long[] shift;
    private final long[] lower0;

    /**
     * A copy that depends only on its arguments.
     *
     * @param dimensions 1 to 32
     * @param seed of the run
     * @param replicate index of this copy
     */
    public ScrambledSobol(int dimensions, long seed, int replicate) {
        if (!(dimensions >= 1 && dimensions <= SobolMatrices.DIMENSIONS)) {
            throw new IllegalArgumentException(
                    "dimensions " + dimensions + " is outside 1 to " + SobolMatrices.DIMENSIONS);
        }
        // Mixed twice: SplittableRandom advances by a constant, so nearby seeds would share numbers.
        SplittableRandom random = new SplittableRandom(mix(mix(seed) + replicate + 1));
        columns = new long[dimensions][];
        shift = new long[dimensions];
        long[] first = null;
        for (int d = 0; d < dimensions; d++) {
            long[] lower = randomLowerRows(random);
            first = d == 0 ? lower : first;
            columns[d] = multiply(lower, SobolMatrices.columns(d, MAX_BITS));
            shift[d] = random.nextLong();
        }
        lower0 = first;
    }

    /** The first {@code count} copies for a seed; the same objects again if they were asked for last. */
    public static List<ScrambledSobol> replicates(int dimensions, long seed, int count) {
        Copies found = last;
        if (found.dimensions != dimensions || found.seed != seed || found.all.size() != count) {
            found = new Copies(
                    dimensions,
                    seed,
                    IntStream.range(0, count)
                            .mapToObj(r -> new ScrambledSobol(dimensions, seed, r))
                            .toList());
            last = found;
        }
        return found.all;
    }

    /** Hashes a seed (finalizer of the SplittableRandom family, Steele et al. 2014). */
    private static long mix(long z) {
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** Rows of a random unit lower triangular matrix; digit 0 is the highest bit. */
    private static long[] randomLowerRows(SplittableRandom random) {
        long[] rows = new long[SobolMatrices.DIGITS];
        for (int r = 0; r < rows.length; r++) {
            long diagonal = 1L << (SobolMatrices.DIGITS - 1 - r);
            long above = r == 0 ? 0 : -1L << (SobolMatrices.DIGITS - r);
            rows[r] = (random.nextLong() & above) | diagonal;
        }
        return rows;
    }

    private static long[] multiply(long[] rows, long[] cols) {
        long[] lower = transposed(rows);
        long[] out = new long[cols.length];
        for (int c = 0; c < cols.length; c++) {
            for (long rest = cols[c]; rest != 0; rest &= rest - 1) {
                out[c] ^= lower[Long.numberOfTrailingZeros(rest)];
            }
        }
        return out;
    }

    /** Columns of a matrix, numbered by the bit that stands for them in its rows. */
    private static long[] transposed(long[] rows) {
        long[] columns = new long[SobolMatrices.DIGITS];
        for (int r = 0; r < rows.length; r++) {
            long digit = 1L << (SobolMatrices.DIGITS - 1 - r);
            for (long rest = rows[r]; rest != 0; rest &= rest - 1) {
                columns[Long.numberOfTrailingZeros(rest)] |= digit;
            }
        }
        return columns;
    }

    /**
     * The points of block {@code number}, if block 0 has 2^{@code firstBits} points.
     *
     * @param firstBits 0 to 40
     * @param number 0 or more, so that the block has fewer than 2^43 points
     */
    public Block block(int firstBits, int number) {
        int bits = number == 0 ? firstBits : firstBits + number - 1;
        if (!(firstBits >= 0 && number >= 0 && bits < MAX_BITS)) {
            throw new IllegalArgumentException("block " + number + " of 2^" + firstBits + " points is too large");
        }
        Block block = lastBlock;
        if (block == null || block.bits != bits || block.later != (number > 0)) {
            block = new Block(bits, number > 0);
            lastBlock = block;
        }
        return block;
    }

    /** One block of points, ascending in the first coordinate. */
    public final class Block {
        private final int bits;
        private final boolean later;
        private final long[][] steps;
        private final long[] start;
        private volatile SobolPatterns lastPatterns;

        private Block(int bits, boolean later) {
            this.bits = bits;
            this.later = later;
            long[] inverse = inverseOfLeading(lower0, bits);
            long atStart = apply(inverse, bits == 0 ? 0 : shift[0] >>> (SobolMatrices.DIGITS - bits));
            steps = new long[columns.length][bits];
            start = new long[columns.length];
            for (int d = 0; d < columns.length; d++) {
                start[d] = shift[d] ^ combine(columns[d], atStart) ^ (later ? columns[d][bits] : 0);
                for (int b = 0; b < bits; b++) {
                    steps[d][b] = combine(columns[d], apply(inverse, 1L << b));
                }
            }
        }

        /** Number of points. */
        public long size() {
            return 1L << bits;
        }

        /** Exclusive-or of the columns whose digit is set in {@code index} (first digit in bit {@code bits − 1}). */
        private long combine(long[] cols, long index) {
            long x = 0;
            for (int c = 0; c < bits; c++) {
                if (((index >>> (bits - 1 - c)) & 1) == 1) {
                    x ^= cols[c];
                }
            }
            return x;
        }

        /** The digits of coordinate {@code d} of point {@code j}. */
        long digits(int d, long j) {
            long x = start[d];
            for (long rest = j; rest != 0; rest &= rest - 1) {
                x ^= steps[d][Long.numberOfTrailingZeros(rest)];
            }
            return x;
        }

        /** Patterns of aligned batches of {@code length} points, a power of two not above {@link #size()}. */
        SobolPatterns patterns(int length) {
            SobolPatterns patterns = lastPatterns;
            if (patterns == null || patterns.length() != length) {
                patterns = new SobolPatterns(steps, length);
                lastPatterns = patterns;
            }
            return patterns;
        }
    }

    /** Columns of the inverse of the leading bits × bits part of a unit lower triangular matrix, as index words. */
    private static long[] inverseOfLeading(long[] rows, int bits) {
        long[] out = new long[bits];
        for (int b = 0; b < bits; b++) {
            out[b] = solve(rows, bits, 1L << b);
        }
        return out;
    }

    /** Solves L·i = j by forward substitution; first digit of i and j in bit {@code bits − 1}. */
    private static long solve(long[] rows, int bits, long j) {
        long i = 0;
        for (int r = 0; r < bits; r++) {
            int place = bits - 1 - r;
            long known = rows[r] >>> (SobolMatrices.DIGITS - bits);
            long parity = (Long.bitCount(known & i) & 1) ^ ((j >>> place) & 1);
            i |= parity << place;
        }
        return i;
    }

    private static long apply(long[] inverseColumns, long word) {
        long x = 0;
        for (int b = 0; b < inverseColumns.length; b++) {
            if (((word >>> b) & 1) == 1) {
                x ^= inverseColumns[b];
            }
        }
        return x;
    }

    /** Number of coordinates. */
    public int dimensions() {
        return columns.length;
    }
}
