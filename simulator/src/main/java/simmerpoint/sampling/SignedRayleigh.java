package simmerpoint.sampling;

/**
 * The signed distance from the centre of a standard two-dimensional Gaussian, measured along a line through the centre:
 * density |x|/2 · exp(−x²/2).
 *
 * <p>With the line's direction φ uniform on [0, π) the point (x cos φ, x sin φ) has two independent standard normal
 * coordinates. Derived here: both ends of the line together put the density (1/π) · 2 · (|x|/2) exp(−x²/2) on each
 * half-turn, which divided by the circumference is exp(−x²/2)/2π per unit area. The equivalence of sampling two axes and
 * sampling a direction with a distance is also the subject of J. Solar Energy Eng., doi 10.1115/1.4004035 (cited, not
 * seen).
 */
public final class SignedRayleigh {
    private SignedRayleigh() {}

    /** Density |x|/2 · exp(−x²/2) at any {@code x}. */
    public static double density(double x) {
        return 0.5 * Math.abs(x) * Math.exp(-0.5 * x * x);
    }

    /** Probability below {@code x}: ½ exp(−x²/2) for negative x, 1 − ½ exp(−x²/2) from 0 on. */
    public static double cumulative(double x) {
        double outside = 0.5 * Math.exp(-0.5 * x * x);
        return x < 0 ? outside : 1 - outside;
    }

    /**
     * The quantile of {@code u}; the median is 0.
     *
     * @param u probability, 0 to 1; 0 gives −∞ and 1 gives +∞
     * @throws IllegalArgumentException if {@code u} is outside 0 to 1 or NaN
     */
    public static double inverse(double u) {
        if (!(u >= 0 && u <= 1)) {
            throw new IllegalArgumentException("share " + u + " is outside 0 to 1");
        }
        // 2u and 2(1 − u) are exact, so the logarithm is accurate near u = 1 as well.
        return u < 0.5 ? -Math.sqrt(-2 * Math.log(2 * u)) : Math.sqrt(-2 * Math.log(2 * (1 - u)));
    }
}
