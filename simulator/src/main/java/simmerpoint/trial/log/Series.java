package simmerpoint.trial.log;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** One figure over time: straight between two readings, constant before the first and behind the last. */
public final class Series {
    private final double[] seconds;
    private final double[] values;

    private Series(double[] seconds, double[] values) {
        this.seconds = seconds;
        this.values = values;
    }

    /** Of the readings that have the figure; may be empty. */
    public static Series of(List<Reading> readings, ToDoubleFunction<Reading> figure) {
        List<Reading> those = readings.stream().filter(r -> r.has(figure)).toList();
        return new Series(
                those.stream().mapToDouble(Reading::seconds).toArray(),
                those.stream().mapToDouble(figure).toArray());
    }

    /** The same figure all the time. */
    public static Series constant(double value) {
        return new Series(new double[] {0}, new double[] {value});
    }

    /** Whether there is no reading at all. */
    public boolean isEmpty() {
        return values.length == 0;
    }

    /** This, or another where there is no reading. */
    public Series or(Series other) {
        return isEmpty() ? other : this;
    }

    /** The same times a factor. */
    public Series times(double factor) {
        double[] scaled = values.clone();
        for (int k = 0; k < scaled.length; k++) {
            scaled[k] *= factor;
        }
        return new Series(seconds, scaled);
    }

    /** The figure at a time. */
    public double at(double time) {
        int above = above(time);
        if (above == 0) {
            return values[0];
        }
        if (above == seconds.length) {
            return values[above - 1];
        }
        double share = (time - seconds[above - 1]) / (seconds[above] - seconds[above - 1]);
        return values[above - 1] + share * (values[above] - values[above - 1]);
    }

    /** Index of the first reading behind a time. */
    private int above(double time) {
        int low = 0;
        int high = seconds.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (seconds[middle] > time) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** The mean over a time of some length. */
    public double mean(double from, double to) {
        if (!(to > from)) {
            return at(from);
        }
        double sum = 0;
        double before = from;
        double value = at(from);
        for (int k = above(from); k < seconds.length && seconds[k] < to; k++) {
            sum += (seconds[k] - before) * (value + values[k]) / 2;
            before = seconds[k];
            value = values[k];
        }
        return (sum + (to - before) * (value + at(to)) / 2) / (to - from);
    }

    /** Greatest less least over a time. */
    public double spread(double from, double to) {
        double least = Math.min(at(from), at(to));
        double most = Math.max(at(from), at(to));
        for (int k = above(from); k < seconds.length && seconds[k] < to; k++) {
            least = Math.min(least, values[k]);
            most = Math.max(most, values[k]);
        }
        return most - least;
    }
}
