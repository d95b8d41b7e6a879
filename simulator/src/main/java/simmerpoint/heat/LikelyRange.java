package simmerpoint.heat;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * An answer with its honest spread: four in five pans like this one fall between low and high.
 *
 * @param low one pan in ten falls below, in the unit its owner states
 * @param likely the answer for the likely losses
 * @param high one pan in ten falls above
 */
public record LikelyRange(double low, double likely, double high) {
    /** Checks the order, and refuses NaN. */
    public LikelyRange {
        if (!(low <= likely && likely <= high)) {
            throw new IllegalArgumentException("range " + low + ", " + likely + ", " + high + " is not in order");
        }
    }

    /** A figure without spread. */
    public static LikelyRange exact(double value) {
        return new LikelyRange(value, value, value);
    }

    /**
     * The middle four fifths of these equally likely values.
     *
     * @param likely the answer for the likely losses; widens the range should it lie outside
     * @param values at least one, in any order, left as they are
     */
    public static LikelyRange ofSample(double likely, double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new LikelyRange(
                Math.min(likely, quantile(sorted, 0.1)), likely, Math.max(likely, quantile(sorted, 0.9)));
    }

    /** Straight line between order statistics, place q·(n − 1). */
    private static double quantile(double[] sorted, double q) {
        double place = q * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(sorted.length - 1, below + 1);
        if (place == below || sorted[below] == sorted[above]) {
            return sorted[below];
        }
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    /** The range of a rising function of this figure, for a change of unit. */
    public LikelyRange map(DoubleUnaryOperator rising) {
        return new LikelyRange(rising.applyAsDouble(low), rising.applyAsDouble(likely), rising.applyAsDouble(high));
    }

    /** high − low. */
    public double width() {
        return high - low;
    }
}
