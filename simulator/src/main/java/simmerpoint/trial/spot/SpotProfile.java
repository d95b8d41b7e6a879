package simmerpoint.trial.spot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Figures of a spot of light on a grid of square cells, the same for photographs and traced maps.
 *
 * @param x of its centroid from the middle of the grid, to the right, m
 * @param y of its centroid, downwards, m
 * @param halfRadius where the mean brightness around the centroid last falls to half of its greatest, m
 * @param radii about the centroid, hold {@link #SHARES} of the light, m
 */
public record SpotProfile(double x, double y, double halfRadius, List<Double> radii) {
    /** Shares of the light that the radii hold. */
    static final double[] SHARES = {0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9};

    private static final double HALF = 0.5;
    private static final double RINGS_PER_CELL = 20;
    private static final double ROUNDING = 1e-12;

    /** Rings that count as one, since each alone has few cells. */
    private static final int MIDDLE = 4;

    /** Keeps its own list. */
    public SpotProfile {
        radii = List.copyOf(radii);
    }

    /** Width at half of its brightness, m. */
    public double width() {
        return 2 * halfRadius;
    }

    /** Holds half of the light, m. */
    public double radius50() {
        return radii.get(4);
    }

    /** Holds nine tenths, m. */
    public double radius90() {
        return radii.get(8);
    }

    /**
     * Of a map.
     *
     * @param map not all dark
     * @param reach light farther from the centroid does not count, m
     */
    static SpotProfile of(SpotMap map, double reach) {
        double[] values = map.light();
        int columns = map.columns();
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
        double[] within = values.clone();
        for (int k = 0; k < values.length; k++) {
            int row = k / columns;
            radius[k] = Math.hypot(k % columns + 0.5 - mx, row + 0.5 - my);
            within[k] = radius[k] * map.cell() <= reach ? values[k] : 0;
        }
        return new SpotProfile(
                map.cell() * (mx - columns / 2.0),
                map.cell() * (my - map.rows() / 2.0),
                map.cell() * half(values, radius),
                holds(within, radius, map.cell()));
    }

    /** Radii that hold the shares, counted in narrow rings; a twentieth of a cell is finer than what a cell tells. */
    private static List<Double> holds(double[] values, double[] radius, double cell) {
        double sum = 0;
        double[] ring = new double
                [1 + (int) (RINGS_PER_CELL * Arrays.stream(radius).max().orElse(0))];
        for (int k = 0; k < values.length; k++) {
            ring[(int) (RINGS_PER_CELL * radius[k])] += values[k];
            sum += values[k];
        }
        List<Double> found = new ArrayList<>();
        double so = 0;
        for (int r = 0; r < ring.length; r++) {
            so += ring[r];
            while (found.size() < SHARES.length && so >= SHARES[found.size()] * sum * (1 - ROUNDING)) {
                found.add(cell * (r + HALF) / RINGS_PER_CELL);
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
