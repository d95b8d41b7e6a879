package simmerpoint.heat;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * A likely value with its 10th and 90th percentile.
 *
 * @param low 10th percentile, in the unit stated by the owner
 * @param likely value for the likely losses
 * @param high 90th percentile
 */
public record LikelyRange(double low, double likely, double high) {
    /** Checks the order, and refuses NaN. */
    public LikelyRange {
        if (!(low <= likely && likely <= high)) {
            throw new IllegalArgumentException("range " + low + ", " + likely + ", " + high + " is not in order");
        }
    }

    /** A value without range. */
    public static LikelyRange exact(double value) {
        return new LikelyRange(value, value, value);
    }

    /**
     * The 10th to 90th percentile of equally likely values.
     *
     * @param likely value for the likely losses; extends the range if it is outside
     * @param values at least one, in any order, not changed
     */
    public static LikelyRange ofSample(double likely, double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new LikelyRange(
                Math.min(likely, quantile(sorted, 0.1)), likely, Math.max(likely, quantile(sorted, 0.9)));
    }

    /** Linear between order statistics, at the index q·(n − 1). */
    private static double quantile(double[] sorted, double q) {
        double place = q * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(sorted.length - 1, below + 1);
        if (place == below || sorted[below] == sorted[above]) {
            return sorted[below];
        }
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    /** The range of a rising function of this value, for a change of unit. */
    public LikelyRange map(DoubleUnaryOperator rising) {
        return new LikelyRange(rising.applyAsDouble(low), rising.applyAsDouble(likely), rising.applyAsDouble(high));
    }

    /** high − low. */
    public double width() {
        return high - low;
    }
}
