package simmerpoint.sun;

/**
 * Direct sunlight on the dish.
 *
 * @param elevationRadians of the sun when the dish was aimed, above 0 to π/2
 * @param beamWattsPerSquareMetre direct normal irradiance, circumsolar ring included, above 0
 * @param shape of the sun
 */
public record Sunlight(double elevationRadians, double beamWattsPerSquareMetre, SunShape shape) {
    /** Checks both figures. */
    public Sunlight {
        if (!(elevationRadians > 0 && elevationRadians <= Math.PI / 2)) {
            throw new IllegalArgumentException("elevation " + elevationRadians + " rad is outside 0 to pi/2");
        }
        if (!(beamWattsPerSquareMetre > 0 && beamWattsPerSquareMetre < 1e5)) {
            throw new IllegalArgumentException("beam " + beamWattsPerSquareMetre + " W/m2 is not above 0");
        }
    }
}
