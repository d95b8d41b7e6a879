package simmerpoint.sun;

/**
 * Radiance of the sun by the angle from its centre, as a distribution of a ray's angle. Rotationally symmetric. Angles are
 * from the centre, rad.
 */
public interface SunShape {
    /** Kind and parameters in a few words, for reports. */
    String describe();

    /** Radiance at {@code angle} as a share of the radiance at the centre; 0 beyond {@link #largestAngle()}. */
    double relativeRadiance(double angle);

    /** Probability density (per rad) of the angle of a ray. */
    double density(double angle);

    /** Share of the light within {@code angle} of the centre, 0 to 1. */
    double cumulative(double angle);

    /** The angle within which the share {@code u} (0 to 1) of the light lies: samples an angle from a uniform number. */
    double inverse(double u);

    /** Greatest angle with light. */
    double largestAngle();
}
