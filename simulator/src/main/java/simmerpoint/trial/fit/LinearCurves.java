package simmerpoint.trial.fit;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import simmerpoint.scenario.doubts.Doubt;

/**
 * The drawn cookers' curves of all logs as a Gaussian law: straight in every cause by least squares over the cookers, and what is left over
 * with its own covariance (bends, luck in gluing, noise of the rays). The last figure behind all points is the cooking power in the first
 * log. Causes that belong to a day, as the wind, are others in every log; those of the cooker are the same in all.
 *
 * @param causes name and log of each column of {@code slopes}
 * @param mean of points and power over the cookers
 * @param slopes for a standard deviation of each cause
 * @param rest covariance of what is left over
 * @param watts cooking power of each cooker in the first log
 */
record LinearCurves(List<Cause> causes, double[] mean, RealMatrix slopes, RealMatrix rest, double[] watts) {
    private static final Set<String> OF_A_DAY =
            Set.of("aim.up", "aim.side", "air.temperature", "air.wind", "pan.water", "pan.water-temperature");

    /**
     * One cause.
     *
     * @param doubt what is doubted
     * @param log in which log, from 0; below 0 for all
     */
    record Cause(Doubt doubt, int log) {
        boolean isOf(String name, int number) {
            return doubt.cause().equals(name) && (log < 0 || log == number);
        }
    }

    static LinearCurves of(List<DrawnCurves> logs) {
        int[] good = good(logs);
        int points = logs.stream().mapToInt(log -> points(log, good[0])).sum();
        List<Cause> causes = causes(logs);
        RealMatrix slopes = new Array2DRowRealMatrix(points + 1, causes.size());
        double[] mean = new double[points + 1];
        RealMatrix left = new Array2DRowRealMatrix(good.length, points + 1);
        int at = 0;
        int degrees = 1;
        for (int number = 0; number < logs.size(); number++) {
            DrawnCurves log = logs.get(number);
            int n = points(log, good[0]);
            RealMatrix values = values(log, good, n);
            RealMatrix scores = scores(log, good);
            RealMatrix fit = new QRDecomposition(scores).getSolver().solve(values);
            RealMatrix off = values.subtract(scores.multiply(fit));
            degrees = Math.max(1, good.length - scores.getColumnDimension());
            for (int k = 0; k <= n; k++) {
                int row = k < n ? at + k : points;
                if (k < n || number == 0) {
                    mean[row] = fit.getEntry(0, k);
                    left.setColumn(row, off.getColumn(k));
                    put(slopes, row, causes, log, number, fit, k);
                }
            }
            at += n;
        }
        RealMatrix rest = left.transpose().multiply(left).scalarMultiply(1.0 / degrees);
        return new LinearCurves(causes, mean, slopes, rest, watts(logs.get(0), good));
    }

    private static void put(
            RealMatrix slopes, int row, List<Cause> causes, DrawnCurves log, int number, RealMatrix fit, int column) {
        for (int c = 0; c < log.doubts().size(); c++) {
            String name = log.doubts().get(c).cause();
            for (int k = 0; k < causes.size(); k++) {
                if (causes.get(k).isOf(name, number)) {
                    slopes.setEntry(row, k, fit.getEntry(1 + c, column));
                }
            }
        }
    }

    private static List<Cause> causes(List<DrawnCurves> logs) {
        List<Cause> all = new java.util.ArrayList<>();
        Set<String> seen = new TreeSet<>();
        for (int number = 0; number < logs.size(); number++) {
            for (Doubt doubt : logs.get(number).doubts()) {
                boolean ofDay = OF_A_DAY.contains(doubt.cause());
                if (ofDay || seen.add(doubt.cause())) {
                    all.add(new Cause(doubt, ofDay ? number : -1));
                }
            }
        }
        return all;
    }

    private static int[] good(List<DrawnCurves> logs) {
        return java.util.stream.IntStream.range(0, logs.get(0).outcomes().size())
                .filter(d -> logs.stream().allMatch(log -> log.outcomes().get(d).isPresent()))
                .toArray();
    }

    private static int points(DrawnCurves log, int cooker) {
        return log.outcomes().get(cooker).orElseThrow().celsius().length;
    }

    /** A row for each cooker: the points of its curve and its power. */
    private static RealMatrix values(DrawnCurves log, int[] good, int points) {
        RealMatrix values = new Array2DRowRealMatrix(good.length, points + 1);
        for (int row = 0; row < good.length; row++) {
            DrawnCurves.Outcome outcome = log.outcomes().get(good[row]).orElseThrow();
            for (int k = 0; k < points; k++) {
                values.setEntry(row, k, outcome.celsius()[k]);
            }
            values.setEntry(row, points, outcome.watts());
        }
        return values;
    }

    /** A row for each cooker: 1 and its scores. */
    private static RealMatrix scores(DrawnCurves log, int[] good) {
        int causes = log.doubts().size();
        RealMatrix scores = new Array2DRowRealMatrix(good.length, 1 + causes);
        for (int row = 0; row < good.length; row++) {
            scores.setEntry(row, 0, 1);
            for (int c = 0; c < causes; c++) {
                scores.setEntry(row, 1 + c, log.scores()[good[row]][c]);
            }
        }
        return scores;
    }

    private static double[] watts(DrawnCurves log, int[] good) {
        return java.util.Arrays.stream(good)
                .mapToDouble(d -> log.outcomes().get(d).orElseThrow().watts())
                .toArray();
    }

    /** Number of points of all logs. */
    int points() {
        return mean.length - 1;
    }

    /** Covariance of points and power over the cookers. */
    RealMatrix covariance() {
        return slopes.multiply(slopes.transpose()).add(rest);
    }
}
