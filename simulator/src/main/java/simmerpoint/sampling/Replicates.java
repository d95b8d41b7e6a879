package simmerpoint.sampling;

import java.util.function.IntToDoubleFunction;

/** Estimates with standard errors from independent replicates. */
public final class Replicates {
    private Replicates() {}

    /** Mean of {@code n} replicates and its standard error: standard deviation ÷ √n. */
    public static Estimate mean(int n, IntToDoubleFunction value) {
        double sum = 0;
        for (int r = 0; r < n; r++) {
            sum += value.applyAsDouble(r);
        }
        double mean = sum / n;
        double squares = 0;
        for (int r = 0; r < n; r++) {
            double d = value.applyAsDouble(r) - mean;
            squares += d * d;
        }
        return new Estimate(mean, n > 1 ? Math.sqrt(squares / (n - 1) / n) : 0);
    }

    /**
     * A statistic of all replicates and its jackknife standard error √((n − 1)/n · Σ(θ₍ᵣ₎ − mean)²), θ₍ᵣ₎ without
     * replicate r (B. Efron 1982, The Jackknife, the Bootstrap and Other Resampling Plans, SIAM, ch. 2, from memory).
     *
     * @param n number of replicates
     * @param whole the statistic from all of them
     * @param without the statistic from all but replicate r
     */
    public static Estimate jackknife(int n, double whole, IntToDoubleFunction without) {
        double error = mean(n, without).standardError();
        return new Estimate(whole, error * (n - 1));
    }
}
