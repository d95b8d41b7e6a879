package simmerpoint.uncertainty;

import java.util.List;
import simmerpoint.sampling.ScrambledSobol;
import simmerpoint.sampling.SobolBatches;

/**
 * Probabilities for a number of causes, draw by draw: quasi-random points of the unit cube, which cover every cause evenly, so
 * that a few hundred are enough for percentiles. They depend on the seed only.
 */
public final class Draws {
    private final double[][] byCause;

    private Draws(double[][] byCause) {
        this.byCause = byCause;
    }

    /**
     * Draws for so many causes.
     *
     * @param causes 0 to 32
     * @param bits 2^bits draws
     * @param seed of the scramble
     */
    public static Draws of(int causes, int bits, long seed) {
        ScrambledSobol sobol = new ScrambledSobol(Math.max(1, causes), seed, 0);
        ScrambledSobol.Block block = sobol.block(bits, 0);
        SobolBatches all = new SobolBatches(sobol, block, 1 << bits);
        double[][] byCause = new double[causes][1 << bits];
        for (int c = 0; c < causes; c++) {
            all.fill(c, 0, byCause[c]);
        }
        return new Draws(byCause);
    }

    /** Number of causes. */
    public int causes() {
        return byCause.length;
    }

    /** Probability of cause {@code cause} in draw {@code draw}, above 0 and below 1. */
    public double probability(int cause, int draw) {
        return byCause[cause][draw];
    }

    /** The values of all causes in one draw, for their distributions. */
    public double[] values(List<Distribution> causes, int draw) {
        double[] values = new double[causes.size()];
        for (int c = 0; c < values.length; c++) {
            values[c] = causes.get(c).quantile(byCause[c][draw]);
        }
        return values;
    }
}
