package simmerpoint.target;

import java.util.Arrays;
import java.util.List;
import simmerpoint.sampling.Estimate;

/**
 * Standard deviation ÷ mean of flux over the cells that lie wholly on the underside or disc. Squares of flux are taken as
 * products of two different replicates, so that sampling noise does not count as unevenness: with a_r the mean of
 * replicate r over the cells and p_rs the mean product of replicates r and s, e² + 1 = Σp_rs ÷ Σa_r·a_s over all r ≠ s
 * (derived here: independent replicates have uncorrelated noise).
 *
 * <p>Its standard error is that of the mean over pairs of w_rs = p_rs − (e² + 1)·a_r·a_s, which is 0 on average; from
 * pairs that share no replicate, Var = (4Σ_r(Σ_s w_rs)² − 2Σ_rs w_rs²) ÷ (n(n−1)(n−2)(n−3)) for Σw = 0 (derived here: the
 * square of the sum less the part of pairs that share nothing; W. Hoeffding 1948, Ann. Math. Stat. 19, 293-325, treats such
 * sums, from memory). Leaving out one replicate at a time would give up to twice that where noise rules.
 */
final class Evenness {
    /** Cells processed at a time, so that those of all replicates stay in the cache. */
    private static final int BLOCK = 256;

    private final int n;
    private final double[][] products;
    private final double[] means;

    private Evenness(List<Tally> tallies) {
        n = tallies.size();
        int[] inside = cellsInside(tallies.get(0).grids);
        double[][] maps = new double[n][inside.length];
        means = new double[n];
        for (int r = 0; r < n; r++) {
            double[] map = tallies.get(r).planeMap;
            double sum = 0;
            for (int k = 0; k < inside.length; k++) {
                maps[r][k] = map[inside[k]];
                sum += maps[r][k];
            }
            means[r] = sum / inside.length;
        }
        products = new double[n][n];
        for (int from = 0; from < inside.length; from += BLOCK) {
            multiply(maps, from, Math.min(inside.length, from + BLOCK));
        }
        for (int r = 0; r < n; r++) {
            for (int s = 0; s < r; s++) {
                products[r][s] /= inside.length;
                products[s][r] = products[r][s];
            }
        }
    }

    private void multiply(double[][] maps, int from, int to) {
        for (int r = 0; r < n; r++) {
            for (int s = 0; s < r; s++) {
                products[r][s] += product(maps[r], maps[s], from, to);
            }
        }
    }

    static Estimate of(List<Tally> tallies) {
        return new Evenness(tallies).estimate();
    }

    /** Four independent sums, so that additions overlap in the processor's pipeline. */
    private static double product(double[] a, double[] b, int from, int to) {
        double first = 0;
        double second = 0;
        double third = 0;
        double fourth = 0;
        int k = from;
        for (; k + 3 < to; k += 4) {
            first += a[k] * b[k];
            second += a[k + 1] * b[k + 1];
            third += a[k + 2] * b[k + 2];
            fourth += a[k + 3] * b[k + 3];
        }
        for (; k < to; k++) {
            first += a[k] * b[k];
        }
        return first + second + third + fourth;
    }

    private Estimate estimate() {
        double upper = 0;
        double lower = 0;
        for (int r = 0; r < n; r++) {
            for (int s = 0; s < n; s++) {
                if (r != s) {
                    upper += products[r][s];
                    lower += means[r] * means[s];
                }
            }
        }
        if (!(lower > 0)) {
            return Estimate.exact(0);
        }
        double evenness = Math.sqrt(Math.max(0, upper / lower - 1));
        double pairMean = lower / (n * (n - 1.0));
        double error = Math.sqrt(variance(upper / lower)) / pairMean;
        return new Estimate(evenness, evenness > 0 ? error / (2 * Math.max(evenness, Math.sqrt(error))) : error);
    }

    private double variance(double ratio) {
        double rows = 0;
        double squares = 0;
        for (int r = 0; r < n; r++) {
            double row = 0;
            for (int s = 0; s < n; s++) {
                if (r != s) {
                    double w = products[r][s] - ratio * means[r] * means[s];
                    row += w;
                    squares += w * w;
                }
            }
            rows += row * row;
        }
        return Math.max(0, 4 * rows - 2 * squares) / ((double) n * (n - 1) * (n - 2) * (n - 3));
    }

    private static int[] cellsInside(TargetGrids grids) {
        Grid grid = grids.plane();
        int[] cells = new int[grid.cells()];
        int count = 0;
        for (int j = 0; j < grid.rows(); j++) {
            for (int i = 0; i < grid.columns(); i++) {
                double x = Math.abs(grid.first(i)) + grid.cellWidth() / 2;
                double y = Math.abs(grid.second(j)) + grid.cellHeight() / 2;
                if (x * x + y * y <= grids.radius() * grids.radius()) {
                    cells[count++] = j * grid.columns() + i;
                }
            }
        }
        return Arrays.copyOf(cells, count);
    }
}
