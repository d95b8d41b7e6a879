package simmerpoint.uncertainty;

import java.util.List;
import java.util.function.ToDoubleFunction;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;

/** Results of a formula over draws of its causes, under several scrambles, for figures with a standard error. */
final class Propagation {
    private static final int SCRAMBLES = 16;

    private final List<Distribution> causes;
    private final ToDoubleFunction<double[]> formula;
    private final int bits;

    Propagation(List<Distribution> causes, int bits, ToDoubleFunction<double[]> formula) {
        this.causes = causes;
        this.bits = bits;
        this.formula = formula;
    }

    Draws draws(int seed) {
        return Draws.of(causes.size(), bits, seed);
    }

    double[] results(Draws draws) {
        double[] results = new double[1 << bits];
        for (int k = 0; k < results.length; k++) {
            results[k] = formula.applyAsDouble(draws.values(causes, k));
        }
        return results;
    }

    /** Mean and standard error over scrambles of a figure of all results. */
    Estimate figure(ToDoubleFunction<double[]> figure) {
        return Replicates.mean(SCRAMBLES, r -> figure.applyAsDouble(results(draws(r))));
    }

    Estimate quantile(double share) {
        return figure(results -> new Quantiles(results).at(share));
    }

    Estimate mean() {
        return figure(Propagation::mean);
    }

    Estimate standardDeviation() {
        return figure(results -> {
            double mean = mean(results);
            double sum = 0;
            for (double y : results) {
                sum += (y - mean) * (y - mean);
            }
            return Math.sqrt(sum / results.length);
        });
    }

    private static double mean(double[] results) {
        double sum = 0;
        for (double y : results) {
            sum += y;
        }
        return sum / results.length;
    }

    VarianceShares shares(int seed) {
        Draws draws = draws(seed);
        return VarianceShares.of(draws, results(draws));
    }
}
