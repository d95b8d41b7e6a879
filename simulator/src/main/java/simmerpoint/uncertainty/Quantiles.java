package simmerpoint.uncertainty;

import java.util.Arrays;

/** Percentiles of equally likely values, which may be infinite. */
public final class Quantiles {
    private final double[] sorted;

    /** Of at least one value, in any order; not changed. */
    public Quantiles(double[] values) {
        sorted = values.clone();
        Arrays.sort(sorted);
        if (sorted.length == 0 || Double.isNaN(sorted[sorted.length - 1])) {
            throw new IllegalArgumentException("percentiles need values that are numbers");
        }
    }

    /**
     * Linear between order statistics, at the index q·(n − 1).
     *
     * @param share 0 to 1
     */
    public double at(double share) {
        double place = share * (sorted.length - 1);
        int below = (int) Math.floor(place);
        int above = Math.min(sorted.length - 1, below + 1);
        if (place == below || sorted[below] == sorted[above]) {
            return sorted[below];
        }
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    /** The 10th percentile, the median and the 90th percentile. */
    public LikelyRange likelyRange() {
        return new LikelyRange(at(LikelyRange.LOW_SHARE), at(0.5), at(LikelyRange.HIGH_SHARE));
    }
}
