package simmerpoint.sun;

import java.util.function.DoubleUnaryOperator;

/**
 * How the sun's brightness depends on the angle from its centre, and how a ray's angle is drawn from it. The shape is
 * the same all round. Angles are half-angles in rad, 0 at the centre.
 */
public interface SunShape {
    /** Kind and figures in a few words, for reports. */
    String describe();

    /** Radiance at {@code angle} as a share of the radiance at the centre; 0 beyond {@link #largestAngle()}. */
    double relativeRadiance(double angle);

    /** Probability density (per rad) of the angle of a ray. */
    double density(double angle);

    /** Share of the light within {@code angle} of the centre, 0 to 1. */
    double cumulative(double angle);

    /** The angle within which the share {@code u} (0 to 1) of the light lies: draws an angle from a uniform number. */
    double inverse(double u);

    /** No light comes from beyond this angle. */
    double largestAngle();

    /** Root mean square angle per axis, rad. */
    double sigmaPerAxis();

    /** {@link #inverse} as a function, for tables. */
    default DoubleUnaryOperator drawing() {
        return this::inverse;
    }
}
