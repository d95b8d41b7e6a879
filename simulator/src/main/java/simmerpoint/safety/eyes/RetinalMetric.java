package simmerpoint.safety.eyes;

/**
 * Light on the retina of somebody who looks at a bright patch, after C. K. Ho, C. M. Ghanbari, R. B. Diver, Methodology to assess
 * potential glint and glare hazards from concentrating solar power plants, J. Solar Energy Eng. 133, 031021, 2011 (from memory):
 * E_r = E_c d_p² τ/(f² ω²) with the irradiance E_c of the eye, a pupil d_p of 2 mm, τ 0.5, a focal length f of 17 mm and the
 * full angle ω of the patch. Lasting damage within a blink of 0.15 s: E_r > 0.118/ω W/cm², for patches beyond 0.118 rad > 1;
 * after-image: E_r > 3.59·10⁻⁵/ω^1.77. The metric weighs no colours, and holds for an adult in daylight who blinks: an
 * indication, not a limit of exposure.
 */
public final class RetinalMetric {
    /** Full angle of the sun, rad. */
    public static final double SUN = 9.3e-3;

    private static final double PUPIL_MM = 2;
    private static final double EYE_MM = 17;
    private static final double TRANSMITTED = 0.5;
    private static final double BURN = 0.118;
    private static final double AFTER_IMAGE = 3.59e-5;
    private static final double AFTER_IMAGE_POWER = 1.77;

    private RetinalMetric() {}

    /**
     * Irradiance of the retina, W/cm².
     *
     * @param cornea irradiance of the eye, W/cm²
     * @param angle full angle of the patch, rad
     */
    public static double retina(double cornea, double angle) {
        double pupil = PUPIL_MM / EYE_MM;
        return cornea * pupil * pupil * TRANSMITTED / (angle * angle);
    }

    /** Irradiance of the retina that damages it within a blink, W/cm². */
    public static double burnLimit(double angle) {
        return Math.max(1, BURN / angle);
    }

    /** Irradiance of the retina that leaves an after-image, W/cm². */
    public static double afterImageLimit(double angle) {
        return AFTER_IMAGE / Math.pow(angle, AFTER_IMAGE_POWER);
    }

    /** Least angle of a patch that damages a retina with this irradiance within a blink, rad; infinite if none does. */
    public static double burnAngle(double retina) {
        return retina > 1 ? BURN / retina : Double.POSITIVE_INFINITY;
    }
}
