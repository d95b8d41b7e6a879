package simmerpoint.sun;

/**
 * The greatest beam to be expected for a given elevation of the sun. At sea level it is the upper end of a printed table of
 * sunlight against zenith angle with its spread by pollution: beam and a tenth of diffuse light, for {@link MeinelSky} and the earth's
 * mean distance. Between its rows the logarithm of the optical depth runs straight with that of the air mass. Height above the
 * sea is that of {@link MeinelSky}; the sun is 3.4 % stronger when the earth is nearest to it, in January.
 */
public final class MaximumBeam {
    /** Beam and diffuse light together, of the beam. */
    private static final double WITH_DIFFUSE = 1.1;

    private static final double[] ZENITH_DEGREES = {0, 30, 60, 80, 85};
    private static final double[] MOST_SUNLIGHT = {1130, 1100, 970, 660, 480};
    private static final double NEAREST = 1.034;
    private static final double[] LOG_AIR = new double[ZENITH_DEGREES.length];
    private static final double[] LOG_DEPTH = new double[ZENITH_DEGREES.length];

    static {
        for (int k = 0; k < LOG_AIR.length; k++) {
            LOG_AIR[k] = Math.log(AirMass.relative(Math.toRadians(90 - ZENITH_DEGREES[k])));
            LOG_DEPTH[k] = Math.log(Math.log(Extraterrestrial.MEINEL * WITH_DIFFUSE / MOST_SUNLIGHT[k]));
        }
    }

    private MaximumBeam() {}

    /**
     * Beam on a surface that faces the sun, W/m².
     *
     * @param elevationRadians of the sun above the horizon, above 0 and up to π/2
     * @param altitudeMetres above the sea; counted as 0 to 3000 m
     */
    public static double wattsPerSquareMetre(double elevationRadians, double altitudeMetres) {
        double height = Math.max(0, Math.min(altitudeMetres, new MeinelSky().highestAltitudeMetres()));
        double through = Math.exp(-Math.exp(logDepth(Math.log(AirMass.relative(elevationRadians)))));
        return NEAREST * Extraterrestrial.MEINEL * MeinelSky.raised(through, height);
    }

    private static double logDepth(double logAir) {
        int k = 0;
        while (k < LOG_AIR.length - 2 && logAir > LOG_AIR[k + 1]) {
            k++;
        }
        double share = (logAir - LOG_AIR[k]) / (LOG_AIR[k + 1] - LOG_AIR[k]);
        return LOG_DEPTH[k] + share * (LOG_DEPTH[k + 1] - LOG_DEPTH[k]);
    }
}
