package simmerpoint.trial.fit;

import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * Bayes' rule for Gaussian laws (any textbook, for instance Tarantola 2005, Inverse Problem Theory, 3.2.2, from memory): measured points d =
 * model + noise, model ~ N(mean, prior). Deviations are whitened by the Cholesky factor of prior + noise, so that the logarithm of a
 * likelihood is −½ of a sum of squares.
 */
final class GaussianUpdate {
    private final RealMatrix lower;
    private final RealMatrix covariance;
    private final CholeskyDecomposition factor;
    private final RealMatrix noise;

    /**
     * For given laws.
     *
     * @param prior covariance of the model's points
     * @param noise of the measured points
     */
    GaussianUpdate(RealMatrix prior, RealMatrix noise) {
        this.noise = noise;
        covariance = prior.add(noise);
        factor = new CholeskyDecomposition(covariance, 1e-9, -1e-9);
        lower = factor.getL();
    }

    /** The same with noise of {@code times} the variance. */
    GaussianUpdate noisier(double times) {
        return new GaussianUpdate(covariance.subtract(noise), noise.scalarMultiply(times));
    }

    /** Deviations of variance 1 that know nothing of each other. */
    double[] whitened(double[] off) {
        double[] white = off.clone();
        for (int i = 0; i < white.length; i++) {
            double sum = white[i];
            for (int j = 0; j < i; j++) {
                sum -= lower.getEntry(i, j) * white[j];
            }
            white[i] = sum / lower.getEntry(i, i);
        }
        return white;
    }

    /** Covariance⁻¹ times deviations. */
    double[] weighted(double[] off) {
        RealVector solved = factor.getSolver().solve(new ArrayRealVector(off));
        return solved.toArray();
    }

    /** Covariance⁻¹ times the columns of a matrix. */
    RealMatrix weighted(RealMatrix columns) {
        return factor.getSolver().solve(columns);
    }

    /** Sum of squares of what noise alone leaves: deviations from the model that suits best, by the noise's law. */
    double misfit(double[] off) {
        RealVector weights = new ArrayRealVector(weighted(off));
        return weights.dotProduct(noise.operate(weights));
    }

    /** What that is on average if all laws hold: the trace of covariance⁻¹ · noise. */
    double expectedMisfit() {
        return factor.getSolver().solve(noise).getTrace();
    }
}
