package simmerpoint.target;

import java.util.List;
import java.util.function.Function;

/** Flux and its standard error per cell from the maps of independent replicates. */
final class MapSums {
    private MapSums() {}

    /**
     * The map of the sum of two maps, or of one if both are the same.
     *
     * @param grid of all of them
     * @param tallies the replicates
     * @param first picks a replicate's map
     * @param second picks another one to be added to it
     */
    static FluxMap of(
            Grid grid, List<Tally> tallies, Function<Tally, double[]> first, Function<Tally, double[]> second) {
        int n = tallies.size();
        double[] sum = new double[grid.cells()];
        double[] squares = new double[grid.cells()];
        for (Tally t : tallies) {
            double[] a = first.apply(t);
            double[] b = second.apply(t);
            double perCell = 1 / (t.rays * grid.cellArea());
            for (int c = 0; c < sum.length; c++) {
                double flux = perCell * (a == b ? a[c] : a[c] + b[c]);
                sum[c] += flux;
                squares[c] += flux * flux;
            }
        }
        for (int c = 0; c < sum.length; c++) {
            sum[c] /= n;
            squares[c] = Math.sqrt(Math.max(0, squares[c] / n - sum[c] * sum[c]) / (n - 1));
        }
        return new FluxMap(
                grid.columns(),
                grid.rows(),
                grid.cellWidth(),
                grid.cellHeight(),
                grid.firstMin(),
                grid.secondMin(),
                sum,
                squares);
    }
}
