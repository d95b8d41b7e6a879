package simmerpoint.uncertainty;

import java.util.function.DoubleUnaryOperator;

/**
 * A likely value with its 10th and 90th percentile: four in five lie between.
 *
 * @param low 10th percentile, in the unit stated by the owner
 * @param likely the median, or the value for likely figures
 * @param high 90th percentile
 */
public record LikelyRange(double low, double likely, double high) {
    /** Share of all values below {@link #low}. */
    public static final double LOW_SHARE = 0.1;

    /** Share of all values below {@link #high}. */
    public static final double HIGH_SHARE = 0.9;

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
        Quantiles of = new Quantiles(values);
        return new LikelyRange(Math.min(likely, of.at(LOW_SHARE)), likely, Math.max(likely, of.at(HIGH_SHARE)));
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
