package simmerpoint.sun;

/**
 * How much direct sunlight comes through a sky without clouds. All models give direct normal irradiance, that is on a
 * surface square to the beam, with the bright ring close about the sun, as instruments of 5° field see it. Clouds,
 * smoke and dust storms are left out.
 */
public interface ClearSky {
    /** Model and figures in a few words, for reports. */
    String describe();

    /** Beam at {@code moment}, W/m²; 0 if the sun is not above the horizon. */
    double beamWattsPerSquareMetre(SunMoment moment);

    /** Up to this height above the sea, m, the model was made for; above it only its ratios to others mean anything. */
    default double highestAltitudeMetres() {
        return Site.HIGHEST_ALTITUDE;
    }
}
