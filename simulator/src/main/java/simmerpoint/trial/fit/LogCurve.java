package simmerpoint.trial.fit;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.trial.log.Reading;

/**
 * The water of a log in a few dozen points, each the mean of neighbouring readings.
 *
 * @param seconds since the first row
 * @param celsius the water
 * @param readings how many went into each point
 */
public record LogCurve(double[] seconds, double[] celsius, int[] readings) {
    private static final int POINTS = 24;

    /** Of the readings up to a time. */
    static LogCurve of(List<Reading> water, double until) {
        List<double[]> sums = new ArrayList<>();
        int bin = -1;
        for (Reading reading : water) {
            if (reading.seconds() > until) {
                break;
            }
            int own = (int) Math.min(POINTS - 1, Math.floor(POINTS * reading.seconds() / Math.max(1, until)));
            if (own != bin) {
                sums.add(new double[3]);
                bin = own;
            }
            double[] sum = sums.get(sums.size() - 1);
            sum[0] += reading.seconds();
            sum[1] += reading.waterCelsius();
            sum[2]++;
        }
        return new LogCurve(
                sums.stream().mapToDouble(s -> s[0] / s[2]).toArray(),
                sums.stream().mapToDouble(s -> s[1] / s[2]).toArray(),
                sums.stream().mapToInt(s -> (int) s[2]).toArray());
    }

    /** Number of points. */
    public int points() {
        return seconds.length;
    }
}
