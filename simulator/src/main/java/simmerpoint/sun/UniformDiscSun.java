package simmerpoint.sun;

/**
 * A disc of uniform radiance. Neglects limb darkening and the circumsolar ring. sin²θ of a ray is uniform on 0 to sin² of
 * the half-angle (see the package's convention), so the share within θ is (sin θ / sin θs)²; exact for any half-angle.
 *
 * @param halfAngle from the centre to the edge, rad, above 0 to 0.1. For nearly parallel light use 1e-9
 */
public record UniformDiscSun(double halfAngle) implements SunShape {
    /** The sun at mean distance. */
    public static final UniformDiscSun MEAN_SUN = new UniformDiscSun(SolarDisc.MEAN_HALF_ANGLE_RADIANS);

    /** Checks the half-angle. */
    public UniformDiscSun {
        SunShapeChecks.aboveZero("half-angle", halfAngle, SunShapeChecks.WIDEST);
    }

    @Override
    public String describe() {
        return "uniform disc, half-angle " + SunShapeChecks.mrad(halfAngle);
    }

    @Override
    public double relativeRadiance(double angle) {
        return angle >= 0 && angle <= halfAngle ? 1 : 0;
    }

    @Override
    public double density(double angle) {
        double edge = Math.sin(halfAngle);
        return relativeRadiance(angle) * Math.sin(2 * angle) / (edge * edge);
    }

    @Override
    public double cumulative(double angle) {
        if (angle >= halfAngle) {
            return 1;
        }
        double ratio = Math.sin(Math.max(0, angle)) / Math.sin(halfAngle);
        return ratio * ratio;
    }

    @Override
    public double inverse(double u) {
        return SunShapeChecks.share(u) == 1 ? halfAngle : Math.asin(Math.sqrt(u) * Math.sin(halfAngle));
    }

    @Override
    public double largestAngle() {
        return halfAngle;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof UniformDiscSun sun && sun.halfAngle == halfAngle;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(halfAngle);
    }
}
