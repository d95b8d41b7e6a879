package simmerpoint.trial.spot;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Figures of a spot of light on a grid of square cells, the same for photographs and traced maps.
 *
 * @param x of its centroid from the middle of the grid, m
 * @param y of its centroid, m
 * @param halfRadius where the mean brightness around the centroid last falls to half of its greatest, m
 * @param radius50 about the centroid, holds half of the light, m
 * @param radius90 the same for 90 %, m
 */
public record SpotProfile(double x, double y, double halfRadius, double radius50, double radius90) {
    private static final double HALF = 0.5;

    /** Rings that count as one, since each alone has few cells. */
    private static final int MIDDLE = 4;

    /**
     * Of brightness on a grid.
     *
     * @param values row by row, none below 0, not all 0
     * @param columns cells in a row
     * @param cell width of a cell, m
     */
    static SpotProfile of(double[] values, int columns, double cell) {
        int rows = values.length / columns;
        double sum = 0;
        double sx = 0;
        double sy = 0;
        for (int k = 0; k < values.length; k++) {
            int row = k / columns;
            sum += values[k];
            sx += values[k] * (k % columns + 0.5);
            sy += values[k] * (row + 0.5);
        }
        double mx = sx / sum;
        double my = sy / sum;
        double[] radius = new double[values.length];
        for (int k = 0; k < values.length; k++) {
            int row = k / columns;
            radius[k] = Math.hypot(k % columns + 0.5 - mx, row + 0.5 - my);
        }
        double[] holds = holds(values, radius, sum);
        return new SpotProfile(
                cell * (mx - columns / 2.0),
                cell * (my - rows / 2.0),
                cell * half(values, radius),
                cell * holds[0],
                cell * holds[1]);
    }

    /** Radii that hold half and nine tenths. */
    private static double[] holds(double[] values, double[] radius, double sum) {
        int[] order = IntStream.range(0, values.length)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> radius[k]))
                .mapToInt(k -> k)
                .toArray();
        double[] found = {Double.NaN, Double.NaN};
        double so = 0;
        for (int k : order) {
            so += values[k];
            if (Double.isNaN(found[0]) && so >= HALF * sum) {
                found[0] = radius[k];
            }
            if (so >= 0.9 * sum) {
                found[1] = radius[k];
                return found;
            }
        }
        return found;
    }

    /** In rings a cell wide; straight between their middles. */
    private static double half(double[] values, double[] radius) {
        int rings = 2 + (int) Arrays.stream(radius).max().orElse(0);
        double[] mean = new double[rings];
        double[] count = new double[rings];
        for (int k = 0; k < values.length; k++) {
            mean[(int) radius[k]] += values[k];
            count[(int) radius[k]]++;
        }
        double most = 0;
        double inner = 0;
        double cells = 0;
        for (int r = 0; r < rings; r++) {
            inner += r < MIDDLE ? mean[r] : 0;
            cells += r < MIDDLE ? count[r] : 0;
            mean[r] = count[r] > 0 ? mean[r] / count[r] : 0;
            most = r < MIDDLE ? inner / Math.max(1, cells) : Math.max(most, mean[r]);
        }
        int last = rings - 2;
        while (last > 0 && mean[last] < HALF * most) {
            last--;
        }
        double fall = mean[last] - mean[last + 1];
        double share = fall > 0 ? Math.min(1, (mean[last] - HALF * most) / fall) : 0;
        return last + HALF + share;
    }
}
