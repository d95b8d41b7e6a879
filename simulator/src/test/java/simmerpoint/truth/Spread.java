package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.distribution.FDistribution;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import simmerpoint.sampling.Estimate;

/** One figure over many seeds: how far its values really lie apart, against the standard errors it claims. */
final class Spread {
    private final String name;
    private final int replicates;
    private final SummaryStatistics values = new SummaryStatistics();
    private final SummaryStatistics claimed = new SummaryStatistics();

    /** {@code replicates} is the number behind each standard error. */
    Spread(String name, int replicates) {
        this.name = name;
        this.replicates = replicates;
    }

    void add(Estimate estimate) {
        values.addValue(estimate.value());
        claimed.addValue(estimate.standardError() * estimate.standardError());
    }

    /** Real standard deviation over the claimed one. */
    double ratio() {
        return Math.sqrt(values.getVariance() / claimed.getMean());
    }

    /** Standard error of the mean over the seeds. */
    Estimate mean() {
        return new Estimate(values.getMean(), values.getStandardDeviation() / Math.sqrt((double) values.getN()));
    }

    /**
     * Ratio of variances within the F distribution of seeds − 1 and seeds·(replicates − 1) degrees of freedom, a false
     * alarm of {@code alarm} on each side for normal replicates.
     */
    void holdsByF(double alarm) {
        double n = values.getN();
        FDistribution f = new FDistribution(n - 1, n * (replicates - 1));
        double low = Math.sqrt(f.inverseCumulativeProbability(alarm));
        double high = Math.sqrt(f.inverseCumulativeProbability(1 - alarm));
        assertTrue(ratio() >= low && ratio() <= high, () -> describe(low, high));
    }

    /** Ratio of standard deviations within 1 ± {@code share}. */
    void holdsWithin(double share) {
        assertTrue(Math.abs(ratio() - 1) <= share, () -> describe(1 - share, 1 + share));
    }

    private String describe(double low, double high) {
        return String.format(
                "%s: over %d seeds the spread is %.4g, the stated standard error %.4g: ratio %.3f, allowed %.3f to %.3f",
                name, values.getN(), values.getStandardDeviation(), Math.sqrt(claimed.getMean()), ratio(), low, high);
    }
}
