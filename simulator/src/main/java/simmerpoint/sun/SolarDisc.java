package simmerpoint.sun;

/** How large the sun looks, from two figures agreed on by the International Astronomical Union. */
public final class SolarDisc {
    /** Nominal solar radius, m: IAU 2015 Resolution B3. */
    public static final double NOMINAL_RADIUS_METRES = 6.957e8;

    /** Astronomical unit, m, exact: IAU 2012 Resolution B2. */
    public static final double ASTRONOMICAL_UNIT_METRES = 149_597_870_700.0;

    /**
     * Half-angle of the disc from the mean distance, rad: asin(radius / astronomical unit) = 4.6505 mrad. Through the
     * year it varies by 1.7 % either way, since the earth's path is not a circle.
     */
    public static final double MEAN_HALF_ANGLE_RADIANS = Math.asin(NOMINAL_RADIUS_METRES / ASTRONOMICAL_UNIT_METRES);

    private SolarDisc() {}
}
