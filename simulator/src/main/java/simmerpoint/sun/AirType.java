package simmerpoint.sun;

import java.util.Locale;

/** Type of the air at a site: the usual one there, or one of a mild climate, from the cleanest to the haziest. */
public enum AirType {
    /** Usual air of the place, by its latitude, longitude and altitude. */
    LOCAL,
    /** Air above most of the haze. */
    MOUNTAINS,
    /** Open country. */
    RURAL,
    /** A town. */
    CITY,
    /** Beside works and heavy traffic. */
    INDUSTRIAL;

    /** Name in files and reports. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
