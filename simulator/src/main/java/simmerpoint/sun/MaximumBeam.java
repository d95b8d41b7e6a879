package simmerpoint.sun;

/**
 * The greatest beam to be expected for a given elevation of the sun: the largest of {@link MeinelSky}, {@link HottelSky}
 * and {@link EsraSky} in very clear air (Linke turbidity 2), each at the earth's mean distance, plus the 3.4 % that the
 * sun is stronger when the earth is nearest to it, in January.
 */
public final class MaximumBeam {
    private static final double VERY_CLEAR = 2;
    private static final double NEAREST = 1.034;

    private MaximumBeam() {}

    /**
     * Beam on a surface that faces the sun, W/m².
     *
     * @param elevationRadians of the sun above the horizon, above 0 and up to π/2
     * @param altitudeMetres above the sea; counted as 0 to 3000 m
     */
    public static double wattsPerSquareMetre(double elevationRadians, double altitudeMetres) {
        double height = Math.max(0, Math.min(altitudeMetres, new MeinelSky().highestAltitudeMetres()));
        double hottelHeight = Math.min(height, new HottelSky().highestAltitudeMetres());
        double meinel = Extraterrestrial.MEINEL * MeinelSky.transmittance(AirMass.relative(elevationRadians), height);
        double hottel = Extraterrestrial.WORLD_RADIATION_CENTRE
                * HottelSky.transmittance(HottelSky.Climate.STANDARD, Math.sin(elevationRadians), hottelHeight);
        double turbid = Extraterrestrial.WORLD_RADIATION_CENTRE
                * Math.exp(-VERY_CLEAR * EsraSky.opticalDepthPerTurbidity(elevationRadians, height));
        return NEAREST * Math.max(meinel, Math.max(hottel, turbid));
    }
}
