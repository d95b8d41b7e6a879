package simmerpoint.target;

/**
 * Flux on a rectangular grid of equal square or rectangular cells. Row-major: the cell in column i (along the first
 * axis) and row j (along the second) is at j·columns + i. Light that lands beyond the grid is not in it.
 *
 * @param columns cells along the first axis
 * @param rows cells along the second axis
 * @param cellWidth width of a cell along the first axis, m
 * @param cellHeight height of a cell along the second axis, m
 * @param firstMin lower border of the grid on the first axis, m
 * @param secondMin lower border of the grid on the second axis, m
 * @param flux W/m² per cell; not copied, not to be changed
 * @param standardError of the same cells, W/m²
 */
public record FluxMap(
        int columns,
        int rows,
        double cellWidth,
        double cellHeight,
        double firstMin,
        double secondMin,
        double[] flux,
        double[] standardError) {
    /** Middle of column {@code i} on the first axis, m. */
    public double first(int i) {
        return firstMin + (i + 0.5) * cellWidth;
    }

    /** Middle of row {@code j} on the second axis, m. */
    public double second(int j) {
        return secondMin + (j + 0.5) * cellHeight;
    }

    /** Flux of a cell, W/m². */
    public double at(int i, int j) {
        return flux[j * columns + i];
    }

    /** Largest flux of any cell, W/m². For colour scales only: it is biased high. */
    public double largest() {
        double max = 0;
        for (double f : flux) {
            max = Math.max(max, f);
        }
        return max;
    }

    /** Power on the whole grid, W: the sum of flux × cell area. */
    public double power() {
        double sum = 0;
        for (double f : flux) {
            sum += f;
        }
        return sum * cellWidth * cellHeight;
    }
}
