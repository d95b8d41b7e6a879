package simmerpoint.pan;

import java.util.OptionalDouble;

/**
 * A finish of the catalogue.
 *
 * @param finish name and absorptance
 * @param doubt one such pan in twenty is further off in its absorptance
 * @param reflectance share of sunlight reflected, where the source gives it; 1 minus the absorptance
 * @param measured true if the source measured it, false if it is a typical value
 * @param source of the values
 */
public record CatalogueFinish(
        Finish finish, double doubt, OptionalDouble reflectance, boolean measured, String source) {
    /** "measured" or "typical". */
    public String quality() {
        return measured ? "measured" : "typical";
    }
}
