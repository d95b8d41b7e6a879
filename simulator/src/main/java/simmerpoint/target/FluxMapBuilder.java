package simmerpoint.target;

import java.util.List;
import java.util.function.Function;

/** Flux and its standard error per cell from the maps of independent replicates. */
final class FluxMapBuilder {
    private FluxMapBuilder() {}

    /** The map of one kind of cells. */
    static FluxMap of(Grid grid, List<Tally> tallies, Function<Tally, double[]> cells) {
        return of(grid, tallies, cells, 0);
    }

    /** The map of all light that crosses the plane, on the target or outside it. */
    static FluxMap ofCrossing(Grid plane, List<Tally> tallies) {
        return of(plane, tallies, t -> t.planeMap, plane.cells());
    }

    /** Each cell of the grid; with {@code offset} above 0 the sum with the cell that much later. */
    private static FluxMap of(Grid grid, List<Tally> tallies, Function<Tally, double[]> cells, int offset) {
        int n = tallies.size();
        double[] sum = new double[grid.cells()];
        double[] squares = new double[grid.cells()];
        for (Tally t : tallies) {
            double[] map = cells.apply(t);
            double perCell = 1 / (t.rays * grid.cellArea());
            for (int c = 0; c < sum.length; c++) {
                double flux = perCell * (offset == 0 ? map[c] : map[c] + map[c + offset]);
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
