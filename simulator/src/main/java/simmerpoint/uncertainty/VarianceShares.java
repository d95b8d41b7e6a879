package simmerpoint.uncertainty;

import java.util.function.IntToDoubleFunction;

/**
 * Which share of the variance of a result comes from each cause alone: first-order indices of Sobol', Var(E[y | cause]) ÷ Var(y),
 * from the same draws that give its range. E[y | cause] is taken as a polynomial in the cause's probability u: with Legendre
 * polynomials φ of unit variance, c = mean(y·φ(u)) and the share is Σ c² ÷ Var(y). Each c² is too large by the variance of what
 * the polynomials leave over, divided by the number of draws, and is reduced by that.
 *
 * <p>Sources: I. M. Sobol' 1993, Math. Model. Comput. Exp. 1, 407-414 (the indices; from memory); the estimate and its
 * correction derived here. Draws must be {@linkplain Draws quasi-random}: that makes the polynomials of different causes
 * orthogonal over them.
 *
 * @param shares for each cause, 0 to 1
 * @param rest what no cause brings alone: causes that act together, and chance in the results
 */
public record VarianceShares(double[] shares, double rest) {
    private static final int LEAST_DEGREE = 3;
    private static final int BITS_WITHOUT_DEGREE = 4;

    /**
     * The shares for results at all draws.
     *
     * @param draws which probabilities they have
     * @param results finite, one for each draw
     */
    public static VarianceShares of(Draws draws, double[] results) {
        int n = results.length;
        double mean = mean(n, k -> results[k]);
        double variance = mean(n, k -> (results[k] - mean) * (results[k] - mean)) * n / Math.max(1, n - 1);
        double[] shares = new double[draws.causes()];
        if (!(variance > 0)) {
            return new VarianceShares(shares, 0);
        }
        int degree = degree(n);
        double explained = 0;
        for (int c = 0; c < shares.length; c++) {
            int cause = c;
            shares[c] = squares(degree, n, k -> draws.probability(cause, k), k -> results[k] - mean) / variance;
            explained += shares[c];
        }
        // r left over adds r/n to each of m squares: 1 − explained = r·(1 − m/n).
        double perPolynomial = Math.max(0, 1 - explained) / Math.max(1, n - degree * shares.length);
        double sum = 0;
        for (int c = 0; c < shares.length; c++) {
            shares[c] = Math.max(0, Math.min(1, shares[c] - degree * perPolynomial));
            sum += shares[c];
        }
        return new VarianceShares(shares, Math.max(0, 1 - sum));
    }

    /** More draws bear polynomials of a higher degree: 4 at 256 draws, 10 at 16,384. */
    private static int degree(int draws) {
        int bits = 31 - Integer.numberOfLeadingZeros(Math.max(1, draws));
        return Math.max(LEAST_DEGREE, bits - BITS_WITHOUT_DEGREE);
    }

    /** Σ mean(y·φ)² over degrees 1 to {@code degree}. */
    private static double squares(int degree, int n, IntToDoubleFunction u, IntToDoubleFunction y) {
        double[] sums = new double[degree + 1];
        for (int k = 0; k < n; k++) {
            double x = 2 * u.applyAsDouble(k) - 1;
            double before = 1;
            double legendre = x;
            for (int d = 1; d <= degree; d++) {
                sums[d] += y.applyAsDouble(k) * legendre * Math.sqrt(2 * d + 1);
                double next = ((2 * d + 1) * x * legendre - d * before) / (d + 1);
                before = legendre;
                legendre = next;
            }
        }
        double squares = 0;
        for (double sum : sums) {
            squares += sum / n * (sum / n);
        }
        return squares;
    }

    private static double mean(int n, IntToDoubleFunction value) {
        double sum = 0;
        for (int k = 0; k < n; k++) {
            sum += value.applyAsDouble(k);
        }
        return sum / n;
    }

    /** The share of one cause, 0 to 1. */
    public double of(int cause) {
        return shares[cause];
    }
}
