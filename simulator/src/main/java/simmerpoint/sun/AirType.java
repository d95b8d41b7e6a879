package simmerpoint.sun;

import java.util.Locale;

/** What sort of air a place has, from the cleanest to the haziest. */
public enum AirType {
    /** Air above most of the haze. */
    MOUNTAINS,
    /** Open country. */
    RURAL,
    /** A town. */
    CITY,
    /** Beside works and heavy traffic. */
    INDUSTRIAL;

    /** The word for it in files and reports. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
