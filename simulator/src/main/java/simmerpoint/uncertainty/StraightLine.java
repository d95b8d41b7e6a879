package simmerpoint.uncertainty;

import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * The straight line through points that fits best by least squares, y = a + b·x, all points alike (any textbook of statistics, for instance
 * NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1). Intervals follow Student's law with two degrees of freedom less than points.
 *
 * @param points number of points
 * @param intercept at x = 0
 * @param slope per x
 * @param deviation standard deviation of the points about the line; NaN of two points
 * @param meanX mean of all x
 * @param sumSquares of x about their mean
 * @param determination coefficient of determination, 0 to 1
 */
public record StraightLine(
        int points,
        double intercept,
        double slope,
        double deviation,
        double meanX,
        double sumSquares,
        double determination) {
    /** Through at least two points that do not all have the same x. */
    public static StraightLine through(double[] x, double[] y) {
        SimpleRegression fit = new SimpleRegression();
        for (int k = 0; k < x.length; k++) {
            fit.addData(x[k], y[k]);
        }
        if (!(fit.getXSumSquares() > 0)) {
            throw new IllegalArgumentException("a line needs two points beside each other");
        }
        double deviation = x.length > 2 ? Math.sqrt(fit.getMeanSquareError()) : Double.NaN;
        double determination = fit.getTotalSumSquares() > 0 ? Math.max(0, fit.getRSquare()) : 1;
        return new StraightLine(
                x.length,
                fit.getIntercept(),
                fit.getSlope(),
                deviation,
                StatUtils.mean(x),
                fit.getXSumSquares(),
                determination);
    }

    /** The line at a place. */
    public double at(double x) {
        return intercept + slope * x;
    }

    /** Standard error of the slope. */
    public double slopeError() {
        return deviation / Math.sqrt(sumSquares);
    }

    /** Standard error of the line at a place. */
    public double errorAt(double x) {
        return deviation * Math.sqrt(1.0 / points + (x - meanX) * (x - meanX) / sumSquares);
    }

    /** Standard deviation of one more point about the line at a place. */
    public double deviationAt(double x) {
        return Math.hypot(deviation, errorAt(x));
    }

    /**
     * How many standard errors an interval reaches to each side.
     *
     * @param confidence share of such intervals that hold the truth, such as 0.95
     */
    public double reach(double confidence) {
        return points > 2
                ? new TDistribution(null, points - 2.0).inverseCumulativeProbability((1 + confidence) / 2)
                : Double.NaN;
    }
}
