package simmerpoint.pan;

import java.util.OptionalDouble;

/**
 * A finish of the catalogue.
 *
 * @param finish name and absorptance
 * @param reflectance share of sunlight it throws back, where the source gives it; with the absorptance it makes 1
 * @param measured true if the source measured it, false if it is typical only
 * @param source who says so
 */
public record CatalogueFinish(Finish finish, OptionalDouble reflectance, boolean measured, String source) {
    /** "measured" or "typical". */
    public String quality() {
        return measured ? "measured" : "typical";
    }
}
