package simmerpoint.uncertainty;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/** The usual distributions of what is not known exactly (JCGM 101:2008, table 1). */
public final class Distributions {
    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    /** One in ten is more than so many standard deviations above the mean of a normal distribution. */
    private static final double UPPER_TENTH = NORMAL.inverseCumulativeProbability(0.9);

    private Distributions() {}

    /** No doubt at all. */
    public static Distribution exact(double value) {
        return probability -> value;
    }

    /** Normal. */
    public static Distribution normal(double mean, double standardDeviation) {
        requireWidth(standardDeviation);
        return probability -> mean + standardDeviation * standardNormal(probability);
    }

    /**
     * Normal, cut off at the ends of an interval, in which its mean must lie.
     */
    public static Distribution normalWithin(double mean, double standardDeviation, double low, double high) {
        requireWidth(standardDeviation);
        if (!(low <= mean && mean <= high)) {
            throw new IllegalArgumentException("mean " + mean + " is outside " + low + " to " + high);
        }
        if (standardDeviation == 0 || low == high) {
            return exact(mean);
        }
        double below = NORMAL.cumulativeProbability((low - mean) / standardDeviation);
        double inside = NORMAL.cumulativeProbability((high - mean) / standardDeviation) - below;
        return probability -> {
            double value = mean + standardDeviation * standardNormal(below + probability * inside);
            return Math.max(low, Math.min(high, value));
        };
    }

    /**
     * A factor or a size that cannot be negative: its logarithm is normal.
     *
     * @param median above 0
     * @param upperTenth one in ten is more than this times the median; at least 1
     */
    public static Distribution logNormal(double median, double upperTenth) {
        if (!(median > 0 && upperTenth >= 1)) {
            throw new IllegalArgumentException("median " + median + ", upper tenth " + upperTenth);
        }
        double sigma = Math.log(upperTenth) / UPPER_TENTH;
        return probability -> median * Math.exp(sigma * standardNormal(probability));
    }

    /** All values between two ends alike. */
    public static Distribution uniform(double low, double high) {
        requireWidth(high - low);
        return probability -> low + probability * (high - low);
    }

    /** Swings between two ends as a sine does: most often near its ends. */
    public static Distribution arcsine(double low, double high) {
        requireWidth(high - low);
        return probability -> 0.5 * (low + high - (high - low) * Math.cos(Math.PI * probability));
    }

    /** A mean of a few measurements (Student's law), with its standard error and degrees of freedom. */
    public static Distribution student(double mean, double standardError, double degreesOfFreedom) {
        requireWidth(standardError);
        TDistribution law = new TDistribution(null, degreesOfFreedom);
        return probability -> mean + standardError * law.inverseCumulativeProbability(probability);
    }

    /** Quantile of the normal distribution of mean 0 and standard deviation 1. */
    private static double standardNormal(double probability) {
        return NORMAL.inverseCumulativeProbability(probability);
    }

    private static void requireWidth(double width) {
        if (!(width >= 0 && width < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("width " + width + " is no width");
        }
    }
}
