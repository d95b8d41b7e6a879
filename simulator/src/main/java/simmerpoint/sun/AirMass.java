package simmerpoint.sun;

/**
 * Optical air mass: air on the path of the beam relative to the zenith. F. Kasten and A. T. Young, Revised optical air mass
 * tables and approximation formula, Applied Optics 28 (1989) 4735-4738: m = 1 / [sin h + 0.50572 (h +
 * 6.07995)^−1.6364], h the elevation as seen, in degrees. Within 0.5 % of their table (from memory) from the zenith
 * to the horizon, where it is about 38.
 */
public final class AirMass {
    /** Scale height of the air, m (Rigollier, Bauer and Wald, Solar Energy 68 (2000) 33-48). */
    private static final double SCALE_HEIGHT = 8434.5;

    private AirMass() {}

    /** Relative air mass for a sun seen at {@code elevationRadians} above the horizon, 0 to π/2. */
    public static double relative(double elevationRadians) {
        if (!(elevationRadians >= 0 && elevationRadians <= Math.PI / 2)) {
            throw new IllegalArgumentException("elevation " + elevationRadians + " rad is outside 0 to pi/2");
        }
        double degrees = Math.toDegrees(elevationRadians);
        return 1 / (Math.sin(elevationRadians) + 0.50572 * Math.pow(degrees + 6.07995, -1.6364));
    }

    /** Pressure-corrected air mass at {@code altitudeMetres} above the sea: times exp(−altitude / 8434.5 m). */
    public static double absolute(double elevationRadians, double altitudeMetres) {
        return relative(elevationRadians) * Math.exp(-altitudeMetres / SCALE_HEIGHT);
    }
}
