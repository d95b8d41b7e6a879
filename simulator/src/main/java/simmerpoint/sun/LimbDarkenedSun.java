package simmerpoint.sun;

/**
 * The sun's disc with limb darkening. Radiance 0.3 + 0.93 μ − 0.23 μ² of the centre's, at 550 nm, A. N. Cox (ed.), Allen's
 * Astrophysical Quantities, 2000. μ is the cosine of the emission angle at the sun's surface: μ² = 1 − (sin θ / sin θs)²,
 * exact by the law of sines. Red light is darkened less, blue more; over the disc the mean is 0.805 of the centre. Neglects
 * the circumsolar ring.
 *
 * <p>The share of light within θ is, derived here with dq ∝ −μ dμ and s = 1 − μ, the polynomial of {@link #shareOfS}.
 *
 * @param halfAngle from the centre to the edge, rad, above 0 to 0.1
 */
public record LimbDarkenedSun(double halfAngle) implements SunShape {
    /** The sun at mean distance. */
    public static final LimbDarkenedSun MEAN_SUN = new LimbDarkenedSun(SolarDisc.MEAN_HALF_ANGLE_RADIANS);

    private static final double A = 0.3;
    private static final double B = 0.93;
    private static final double C = -0.23;
    /** Mean radiance of the disc over the centre's: A + 2B/3 + C/2. */
    private static final double MEAN = A + 2 * B / 3 + C / 2;

    /** Checks the half-angle. */
    public LimbDarkenedSun {
        SunShapeChecks.aboveZero("half-angle", halfAngle, SunShapeChecks.WIDEST);
    }

    @Override
    public String describe() {
        return "limb-darkened disc, half-angle " + SunShapeChecks.mrad(halfAngle);
    }

    @Override
    public double relativeRadiance(double angle) {
        return angle >= 0 && angle <= halfAngle ? radianceOfMu(Math.sqrt(1 - ratioSquared(angle))) : 0;
    }

    @Override
    public double density(double angle) {
        double edge = Math.sin(halfAngle);
        return relativeRadiance(angle) / MEAN * Math.sin(2 * angle) / (edge * edge);
    }

    @Override
    public double cumulative(double angle) {
        return angle >= halfAngle ? 1 : shareOfQ(ratioSquared(Math.max(0, angle)));
    }

    @Override
    public double inverse(double u) {
        if (SunShapeChecks.share(u) == 0 || u == 1) {
            return u * halfAngle;
        }
        double q = MonotoneRootFinder.find(
                LimbDarkenedSun::shareOfQ, x -> radianceOfMu(Math.sqrt(1 - x)) / MEAN, u, 0, 1, MEAN * u);
        return Math.asin(Math.sqrt(q) * Math.sin(halfAngle));
    }

    @Override
    public double largestAngle() {
        return halfAngle;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LimbDarkenedSun sun && sun.halfAngle == halfAngle;
    }

    @Override
    public int hashCode() {
        return Double.hashCode(halfAngle);
    }

    private double ratioSquared(double angle) {
        double ratio = Math.sin(angle) / Math.sin(halfAngle);
        return Math.min(1, ratio * ratio);
    }

    private static double radianceOfMu(double mu) {
        return A + mu * (B + mu * C);
    }

    /** Share within the angle where (sin θ / sin θs)² is {@code q}; s = q / (1 + μ) is accurate near the centre. */
    private static double shareOfQ(double q) {
        return shareOfS(q / (1 + Math.sqrt(1 - q)));
    }

    /** Integral of 2 m (A + B m + C m²) over m from 1 − s to 1, over that from 0 to 1. */
    private static double shareOfS(double s) {
        double mu = 1 - s;
        double sum = A * (1 + mu) + 2 * B / 3 * (1 + mu + mu * mu) + C / 2 * (1 + mu) * (1 + mu * mu);
        return s * sum / MEAN;
    }
}
