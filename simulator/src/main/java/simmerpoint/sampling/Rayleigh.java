package simmerpoint.sampling;

/**
 * The distance from the centre of a two-dimensional Gaussian of standard deviation σ per axis: cumulative
 * F(x) = 1 − exp(−x²/2σ²). x has the unit of σ.
 *
 * @param sigma standard deviation per axis, above 0 and finite
 */
public record Rayleigh(double sigma) {
    /** Checks sigma. */
    public Rayleigh {
        if (!(sigma > 0 && sigma < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("sigma " + sigma + " is not above 0 and finite");
        }
    }

    /** Density x/σ² · exp(−x²/2σ²), per unit of σ; 0 for negative {@code x}. */
    public double density(double x) {
        double t = x / sigma;
        return x <= 0 ? 0 : t / sigma * Math.exp(-0.5 * t * t);
    }

    /** Probability within {@code x}, 0 to 1, accurate for small x too; 0 for negative {@code x}. */
    public double cumulative(double x) {
        double t = x / sigma;
        return x <= 0 ? 0 : -Math.expm1(-0.5 * t * t);
    }

    /**
     * The quantile of {@code u}: turns a uniform number into a distance.
     *
     * @param u probability, 0 to 1; 1 gives +∞
     * @throws IllegalArgumentException if {@code u} is outside 0 to 1 or NaN
     */
    public double inverse(double u) {
        if (!(u >= 0 && u <= 1)) {
            throw new IllegalArgumentException("share " + u + " is outside 0 to 1");
        }
        return sigma * Math.sqrt(-2 * Math.log1p(-u));
    }
}
