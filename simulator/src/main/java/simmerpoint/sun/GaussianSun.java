package simmerpoint.sun;

/**
 * A sun with the radiance exp(−sin²θ / 2σ²): the Gaussian that hand calculations use for sun, haze and all small errors
 * together. The sine replaces the angle (equal to 0.01 % up to 24 mrad), which makes every formula exact: both direction
 * cosines of a ray are normal with standard deviation σ. Truncated at sin θ = 6σ and renormalised for the 1.5e-8 of the
 * light beyond.
 *
 * @param sigma standard deviation per axis, rad, above 0 to 0.1
 */
public record GaussianSun(double sigma) implements SunShape {
    /** Truncation, in standard deviations. */
    public static final double CUT = 6;

    /** Minus the share of the Gaussian within the truncation. */
    private static final double MINUS_SHARE = Math.expm1(-CUT * CUT / 2);

    /** Checks sigma. */
    public GaussianSun {
        SunShapeChecks.aboveZero("sigma", sigma, 0.1);
    }

    @Override
    public String describe() {
        return "gaussian, sigma " + SunShapeChecks.mrad(sigma);
    }

    @Override
    public double relativeRadiance(double angle) {
        return angle >= 0 && angle <= largestAngle() ? Math.exp(-half(angle)) : 0;
    }

    @Override
    public double density(double angle) {
        return relativeRadiance(angle) * Math.sin(2 * angle) / (2 * sigma * sigma * -MINUS_SHARE);
    }

    @Override
    public double cumulative(double angle) {
        return angle >= largestAngle() ? 1 : Math.expm1(-half(Math.max(0, angle))) / MINUS_SHARE;
    }

    @Override
    public double inverse(double u) {
        if (SunShapeChecks.share(u) == 1) {
            return largestAngle();
        }
        return Math.asin(Math.min(CUT * sigma, sigma * Math.sqrt(-2 * Math.log1p(u * MINUS_SHARE))));
    }

    @Override
    public double largestAngle() {
        return Math.asin(CUT * sigma);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof GaussianSun sun && sun.sigma == sigma;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(sigma);
    }

    /** sin²θ / 2σ². */
    private double half(double angle) {
        double t = Math.sin(angle) / sigma;
        return 0.5 * t * t;
    }
}
