package simmerpoint.sun;

/**
 * A model of beam irradiance under a sky without clouds: direct normal irradiance including the circumsolar ring, as
 * measured by instruments with a field of view of 5°. Clouds, smoke and dust storms are neglected.
 */
public interface ClearSky {
    /** Model and parameters in a few words, for reports. */
    String describe();

    /** Beam at {@code moment}, W/m²; 0 if the sun is not above the horizon. */
    double beamWattsPerSquareMetre(SunMoment moment);

    /** Greatest altitude above the sea for which the model was made, m. */
    default double highestAltitudeMetres() {
        return Site.HIGHEST_ALTITUDE;
    }
}
