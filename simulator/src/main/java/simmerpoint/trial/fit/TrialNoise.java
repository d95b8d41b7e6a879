package simmerpoint.trial.fit;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How far readings lie from the best of models: a thermometer, and gusts and haze that nobody wrote down. A share of the heat over ten
 * minutes that comes or goes by chance adds up over time as a random walk: covariance share² · rate² · 600 s · min(t, t'), derived here.
 * Sizes are our estimates; where the logs scatter more, all of it is raised.
 */
final class TrialNoise {
    /** Standard deviation of a reading, K: a thermometer of ±0.5 K. */
    static final double READING = 0.25;

    /** What no averaging takes away, K. */
    private static final double FLOOR = 0.1;

    private static final double WITH_METER = 0.03;
    private static final double WITHOUT_METER = 0.06;
    private static final double TEN_MINUTES = 600;

    private TrialNoise() {}

    /**
     * Covariance of one log's points, K².
     *
     * @param curve its points
     * @param rate usual rise or fall, K/s
     * @param metered whether its light was measured
     */
    static RealMatrix covariance(LogCurve curve, double rate, boolean metered) {
        int n = curve.points();
        double share = metered ? WITH_METER : WITHOUT_METER;
        double walk = share * share * rate * rate * TEN_MINUTES;
        RealMatrix covariance = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance.setEntry(i, j, walk * Math.min(curve.seconds()[i], curve.seconds()[j]));
            }
            covariance.addToEntry(i, i, READING * READING / curve.readings()[i] + FLOOR * FLOOR);
        }
        return covariance;
    }
}
