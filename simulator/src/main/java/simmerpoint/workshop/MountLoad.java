package simmerpoint.workshop;

import simmerpoint.heat.PhysicalConstants;

/**
 * What a dish puts on its mount.
 *
 * @param mass of the dish, kg
 * @param centreHeight of its centre of mass above the vertex, m
 * @param lever from the mount to the centre of mass, m
 * @param windMoment of a wind of {@link #WIND} that meets it at its worst angle, N·m
 */
public record MountLoad(double mass, double centreHeight, double lever, double windMoment) {
    /** Wind that a mount should stand, m/s: a fresh breeze. */
    public static final double WIND = 8;

    /** What is built holds so many times what is worked out (common practice). */
    public static final double MARGIN = 2;

    /**
     * Greatest moment of wind about the vertex ÷ (dynamic pressure · area · diameter) of an open dish, 0.2 to 0.25 (Peterka and
     * Derickson, SAND92-7009, 1992, from memory).
     */
    private static final double MOMENT = 0.25;

    static MountLoad of(double mass, double centreHeight, double mountBehind, double area, double diameter) {
        double pressure = WindLoad.pressure(WIND);
        return new MountLoad(mass, centreHeight, mountBehind + centreHeight, MOMENT * pressure * area * diameter);
    }

    /** Moment of its weight with the axis level, the worst, N·m. */
    public double weightMoment() {
        return mass * PhysicalConstants.GRAVITY * Math.abs(lever);
    }

    /** What the mount should hold, N·m. */
    public double wantedMoment() {
        return MARGIN * (weightMoment() + windMoment);
    }
}
