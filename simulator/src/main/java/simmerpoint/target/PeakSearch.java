package simmerpoint.target;

import java.util.List;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;

/**
 * Peak flux: mean over a small disc, placed where the first half of the replicates has most light, with the value from the
 * second half. A maximum evaluated on the sample that located it would be biased high. The disc consists of the map's cells
 * whose centres lie in it, and lies wholly on the target.
 */
final class PeakSearch {
    private final TargetGrids grids;
    private final Grid grid;
    private final int radiusInCells;
    private final int[] halfWidths;
    private final int cellsInDisc;

    PeakSearch(TargetGrids grids) {
        this.grids = grids;
        grid = grids.plane();
        double inCells = grids.peakDiscRadius() / grid.cellWidth();
        radiusInCells = (int) Math.floor(inCells - 0.5);
        halfWidths = new int[2 * radiusInCells + 2];
        int cells = 0;
        for (int j = 0; j < halfWidths.length; j++) {
            double up = j - radiusInCells - 0.5;
            double across2 = inCells * inCells - up * up;
            halfWidths[j] = across2 > 0 ? Math.max(0, (int) Math.floor(Math.sqrt(across2) + 0.5)) : 0;
            cells += 2 * halfWidths[j];
        }
        cellsInDisc = cells;
    }

    /** Centre of the disc, m, and the flux over it, W/m². */
    record Peak(double x, double y, Estimate flux) {}

    Peak find(List<Tally> tallies) {
        int half = tallies.size() / 2;
        double[] first = caughtSum(tallies.subList(0, half));
        double[] prefix = rowPrefix(first);
        double most = -1;
        int bestI = grid.columns() / 2;
        int bestJ = grid.rows() / 2;
        double room = grids.radius() - grids.peakDiscRadius() + 1e-9 * grids.radius();
        for (int j = radiusInCells + 1; j < grid.rows() - radiusInCells; j++) {
            for (int i = radiusInCells + 1; i < grid.columns() - radiusInCells; i++) {
                double x = corner(i, grid.firstMin());
                double y = corner(j, grid.secondMin());
                if (x * x + y * y <= room * room) {
                    double light = inDisc(prefix, i, j);
                    if (light > most) {
                        most = light;
                        bestI = i;
                        bestJ = j;
                    }
                }
            }
        }
        List<Tally> second = tallies.subList(half, tallies.size());
        int i = bestI;
        int j = bestJ;
        double perArea = 1 / (cellsInDisc * grid.cellArea() * tallies.get(0).rays);
        Estimate flux = Replicates.mean(second.size(), r -> perArea * inOneDisc(second.get(r).planeMap, i, j));
        return new Peak(corner(i, grid.firstMin()), corner(j, grid.secondMin()), flux);
    }

    /** Lower border of cell {@code i}, m: discs are centred on corners of cells. */
    private double corner(int i, double min) {
        return min + i * grid.cellWidth();
    }

    private double[] caughtSum(List<Tally> tallies) {
        double[] sum = new double[grid.cells()];
        for (Tally t : tallies) {
            double[] map = t.planeMap;
            for (int c = 0; c < sum.length; c++) {
                sum[c] += map[c];
            }
        }
        return sum;
    }

    /** Prefix sums along each row, starting with 0: (columns + 1) per row. */
    private double[] rowPrefix(double[] map) {
        int width = grid.columns() + 1;
        double[] prefix = new double[width * grid.rows()];
        for (int j = 0; j < grid.rows(); j++) {
            for (int i = 0; i < grid.columns(); i++) {
                prefix[j * width + i + 1] = prefix[j * width + i] + map[j * grid.columns() + i];
            }
        }
        return prefix;
    }

    /** Light in the disc about the corner (i, j), summed cell by cell. */
    private double inOneDisc(double[] map, int i, int j) {
        double sum = 0;
        for (int k = 0; k < halfWidths.length; k++) {
            int row = j + k - radiusInCells - 1;
            if (row >= 0 && row < grid.rows()) {
                int to = Math.min(grid.columns(), i + halfWidths[k]);
                for (int column = Math.max(0, i - halfWidths[k]); column < to; column++) {
                    sum += map[row * grid.columns() + column];
                }
            }
        }
        return sum;
    }

    /** Light in the disc about the corner (i, j), from prefix sums. */
    private double inDisc(double[] prefix, int i, int j) {
        int width = grid.columns() + 1;
        double sum = 0;
        for (int k = 0; k < halfWidths.length; k++) {
            int row = j + k - radiusInCells - 1;
            int half = halfWidths[k];
            if (row >= 0 && row < grid.rows() && half > 0) {
                int from = Math.max(0, i - half);
                int to = Math.min(grid.columns(), i + half);
                sum += prefix[row * width + to] - prefix[row * width + from];
            }
        }
        return sum;
    }
}
