package simmerpoint.trial.spot;

import java.util.Arrays;
import simmerpoint.target.FluxMap;

/**
 * Brightness on a card in square cells, as seen from the dish: up is towards the dish's upper edge, right is the right of whoever stands behind
 * the dish.
 *
 * @param light row by row from the top, none below 0; not copied, not to be changed
 * @param columns cells in a row
 * @param cell width of a cell, m
 */
public record SpotMap(double[] light, int columns, double cell) {
    /** Below this share of the brightest a cell counts as dark. */
    private static final double NOTHING = 0.02;

    /** Points by which a cell is sampled each way. */
    private static final int SAMPLES = 3;

    /** Of a traced map of square cells: its first axis points up, its second to the right. */
    static SpotMap of(FluxMap map) {
        double[] light = new double[map.rows() * map.columns()];
        for (int row = 0; row < map.columns(); row++) {
            for (int column = 0; column < map.rows(); column++) {
                light[row * map.rows() + column] = map.at(map.columns() - 1 - row, column);
            }
        }
        return new SpotMap(light, map.rows(), map.cellWidth());
    }

    /** Number of rows. */
    public int rows() {
        return light.length / columns;
    }

    /** Brightest cell. */
    public double most() {
        return Arrays.stream(light).max().orElse(0);
    }

    /** The same without what is next to dark. */
    SpotMap withoutFaint() {
        double least = NOTHING * most();
        return new SpotMap(Arrays.stream(light).map(l -> l < least ? 0 : l).toArray(), columns, cell);
    }

    /** Its figures by the light within a distance of its centroid; not of a dark map. */
    public SpotProfile profile(double reach) {
        return SpotProfile.of(this, reach);
    }

    /** How far the edge is from a place at the least, m. */
    double reach(double x, double y) {
        return Math.min(columns * cell / 2 - Math.abs(x), rows() * cell / 2 - Math.abs(y));
    }

    /**
     * Its light about a place on another grid, all of it adding up to 1.
     *
     * @param x of the new middle from the old, to the right, m
     * @param y downwards, m
     * @param cells each way
     * @param side of the new grid, m
     */
    SpotMap about(double x, double y, int cells, double side) {
        double[] found = new double[cells * cells];
        double step = side / cells / SAMPLES;
        double sum = 0;
        for (int row = 0; row < cells * SAMPLES; row++) {
            for (int column = 0; column < cells * SAMPLES; column++) {
                double value = at(x + (column + 0.5) * step - side / 2, y + (row + 0.5) * step - side / 2);
                found[row / SAMPLES * cells + column / SAMPLES] += value;
                sum += value;
            }
        }
        double whole = Math.max(sum, Double.MIN_NORMAL);
        return new SpotMap(Arrays.stream(found).map(v -> v / whole).toArray(), cells, side / cells);
    }

    /** Brightness at a place, straight between the middles of cells; none beyond the grid. */
    private double at(double x, double y) {
        double u = x / cell + columns / 2.0 - 0.5;
        double v = y / cell + rows() / 2.0 - 0.5;
        int i = (int) Math.floor(u);
        int j = (int) Math.floor(v);
        double p = u - i;
        double q = v - j;
        return (1 - q) * ((1 - p) * cellAt(i, j) + p * cellAt(i + 1, j))
                + q * ((1 - p) * cellAt(i, j + 1) + p * cellAt(i + 1, j + 1));
    }

    private double cellAt(int i, int j) {
        return i >= 0 && j >= 0 && i < columns && j < rows() ? light[j * columns + i] : 0;
    }

    /** Share of the light that lies elsewhere than in another map of the same grid, both of them adding up to 1: half of all differences. */
    double elsewhere(SpotMap other) {
        double sum = 0;
        for (int k = 0; k < light.length; k++) {
            sum += Math.abs(light[k] - other.light[k]);
        }
        return sum / 2;
    }
}
