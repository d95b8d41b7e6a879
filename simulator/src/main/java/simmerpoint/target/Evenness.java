package simmerpoint.target;

import java.util.List;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;

/**
 * Standard deviation ÷ mean of flux over the cells that lie wholly on the underside or disc. The square of a cell's flux
 * is taken as the mean product of two different replicates, so that sampling noise does not count as unevenness (derived
 * here: independent replicates have uncorrelated noise).
 */
final class Evenness {
    private Evenness() {}

    static Estimate of(List<Tally> tallies) {
        int n = tallies.size();
        int[] inside = cellsInside(tallies.get(0).grids);
        double[] sum = new double[inside.length];
        double[] squares = new double[inside.length];
        for (Tally t : tallies) {
            for (int k = 0; k < inside.length; k++) {
                double w = t.caughtMap[inside[k]];
                sum[k] += w;
                squares[k] += w * w;
            }
        }
        double whole = ratio(sum, squares, null, inside, n);
        return Replicates.jackknife(n, whole, r -> ratio(sum, squares, tallies.get(r).caughtMap, inside, n - 1));
    }

    private static double ratio(double[] sum, double[] squares, double[] without, int[] inside, int n) {
        double mean = 0;
        double product = 0;
        for (int k = 0; k < inside.length; k++) {
            double off = without == null ? 0 : without[inside[k]];
            double s = sum[k] - off;
            mean += s;
            product += s * s - (squares[k] - off * off);
        }
        mean /= (double) n * inside.length;
        product /= (double) n * (n - 1) * inside.length;
        return mean > 0 ? Math.sqrt(Math.max(0, product - mean * mean)) / mean : 0;
    }

    private static int[] cellsInside(TargetGrids grids) {
        Grid grid = grids.plane();
        int[] cells = new int[grid.cells()];
        int n = 0;
        for (int j = 0; j < grid.rows(); j++) {
            for (int i = 0; i < grid.columns(); i++) {
                double x = Math.abs(grid.first(i)) + grid.cellWidth() / 2;
                double y = Math.abs(grid.second(j)) + grid.cellHeight() / 2;
                if (Math.hypot(x, y) <= grids.radius()) {
                    cells[n++] = j * grid.columns() + i;
                }
            }
        }
        return java.util.Arrays.copyOf(cells, n);
    }
}
