package simmerpoint.sun;

/**
 * The weight sin x cos x of light at the angle x from the sun's centre (see the package), as a series:
 * x − 2x³/3 + 2x⁵/15 − 4x⁷/315 + 2x⁹/2835 − 4x¹¹/155925, exact to rounding up to 0.1 rad and three times as fast.
 */
final class AngularWeight {
    /** Coefficients of x, x³, x⁵ and so on. */
    static final double[] SERIES = {1, -2.0 / 3, 2.0 / 15, -4.0 / 315, 2.0 / 2835, -4.0 / 155_925};

    private AngularWeight() {}

    /** sin x cos x for x from 0 to 0.1 rad. */
    static double at(double x) {
        double s = x * x;
        return x * (1 + s * (SERIES[1] + s * (SERIES[2] + s * (SERIES[3] + s * (SERIES[4] + s * SERIES[5])))));
    }
}
