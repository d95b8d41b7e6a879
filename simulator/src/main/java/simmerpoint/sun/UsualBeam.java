package simmerpoint.sun;

/**
 * Beam of usual clear air where neither date nor place say more: the mean, each with the same weight, of {@link MeinelSky}, the standard
 * atmosphere of {@link HottelSky} and {@link EsraSky} with a turbidity of {@value #TURBIDITY}, at the sun's mean distance and never more
 * than {@link MaximumBeam}; to 10 W/m², since the three lie some 10 % apart.
 */
public final class UsualBeam {
    private static final double TURBIDITY = 3.5;
    private static final double ROUNDED = 10;

    private UsualBeam() {}

    /**
     * Beam on a surface that faces the sun, W/m², at least 10.
     *
     * @param elevationRadians of the sun above the horizon, above 0 and up to π/2
     * @param altitudeMetres above the sea
     */
    public static double wattsPerSquareMetre(double elevationRadians, double altitudeMetres) {
        double sine = Math.sin(elevationRadians);
        double meinel = Extraterrestrial.MEINEL
                * MeinelSky.transmittance(
                        AirMass.relative(elevationRadians),
                        within(altitudeMetres, new MeinelSky().highestAltitudeMetres()));
        double hottel = HottelSky.transmittance(
                HottelSky.Climate.STANDARD, sine, within(altitudeMetres, new HottelSky().highestAltitudeMetres()));
        double esra = EsraSky.transmittance(TURBIDITY, elevationRadians, altitudeMetres);
        double mean = (meinel + Extraterrestrial.WORLD_RADIATION_CENTRE * (hottel + esra)) / 3;
        double most = MaximumBeam.wattsPerSquareMetre(elevationRadians, altitudeMetres);
        return Math.max(ROUNDED, ROUNDED * Math.round(Math.min(mean, most) / ROUNDED));
    }

    private static double within(double altitudeMetres, double highest) {
        return Math.max(0, Math.min(altitudeMetres, highest));
    }
}
