package simmerpoint.dish.mirror;

import java.util.OptionalDouble;

/**
 * A mirror material of the catalogue. The figures describe the material as it usually ends up on a hand-built dish;
 * angles are standard deviations per axis in rad, of the normal (slope error) or of the reflected ray (spreads).
 *
 * @param name generic, for instance "aluminised polyester film"
 * @param reflectance total solar reflectance when clean, 0 to 1
 * @param reflectanceDoubt one such mirror in twenty is further off than this
 * @param absorptance share of sunlight it takes up, where the source gives it; with reflectance it makes 1
 * @param scattered share of the reflected light that is diffuse, 0 to 1
 * @param slopeErrorRadians of the mirror's normal
 * @param beamSpreadRadians of the reflected ray, the sharp part
 * @param wideShare share of the reflected, not scattered light in the wide part, 0 to 1
 * @param wideSpreadRadians of the reflected ray, the wide part
 * @param rigid whether it is too stiff to bend over ribs
 * @param measured true if the reflectance was measured by the source, false if all of it is typical only
 * @param source who says so, and what is a guess
 */
public record Material(
        String name,
        double reflectance,
        double reflectanceDoubt,
        OptionalDouble absorptance,
        double scattered,
        double slopeErrorRadians,
        double beamSpreadRadians,
        double wideShare,
        double wideSpreadRadians,
        boolean rigid,
        boolean measured,
        String source) {
    /** "measured" or "typical". */
    public String quality() {
        return measured ? "measured" : "typical";
    }

    /** A mirror of this material, with the given dust and panel tilt (rad). */
    public Mirror mirror(double dust, double panelTiltRadians) {
        return new Mirror(
                name,
                reflectance,
                scattered,
                slopeErrorRadians,
                beamSpreadRadians,
                wideShare,
                wideSpreadRadians,
                dust,
                panelTiltRadians);
    }
}
