package simmerpoint.sun;

/** Angular size of the sun, from two constants of the International Astronomical Union. */
public final class SolarDisc {
    /** Nominal solar radius, m: IAU 2015 Resolution B3. */
    public static final double NOMINAL_RADIUS_METRES = 6.957e8;

    /** Astronomical unit, m, exact: IAU 2012 Resolution B2. */
    public static final double ASTRONOMICAL_UNIT_METRES = 149_597_870_700.0;

    /**
     * Half-angle of the disc at mean distance, rad: asin(radius / astronomical unit) = 4.6505 mrad. It varies by ±1.7 %
     * through the year, since the earth's orbit is not a circle.
     */
    public static final double MEAN_HALF_ANGLE_RADIANS = Math.asin(NOMINAL_RADIUS_METRES / ASTRONOMICAL_UNIT_METRES);

    /** Width of the disc at mean distance, rad. */
    public static final double MEAN_WIDTH_RADIANS = 2 * MEAN_HALF_ANGLE_RADIANS;

    private SolarDisc() {}
}
