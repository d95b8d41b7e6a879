package simmerpoint.sun;

import java.util.Locale;

/** Type of the air at a site, from the cleanest to the haziest. */
public enum AirType {
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
