package simmerpoint.dish.mirror;

import simmerpoint.units.RangeCheck;

/**
 * The mirror on the panels: shares of light and angular errors.
 *
 * @param material name in the catalogue, or "own figures"
 * @param reflectance total solar reflectance when clean, 0 to 1
 * @param scattered share of the reflected light that is diffuse: counted, not traced; 0 to 1
 * @param slopeErrorRadians standard deviation per axis of the mirror's normal, 0 to 0.2 rad
 * @param beamSpreadRadians standard deviation per axis of the reflected ray, the sharp part, 0 to 0.2 rad
 * @param wideShare share of the reflected, not scattered light that takes the wide spread instead, 0 to 1
 * @param wideSpreadRadians standard deviation per axis of the reflected ray, the wide part, 0 to 0.2 rad
 * @param dust share of light lost to dust, 0 to below 1
 * @param panelTiltRadians standard deviation per axis of the tilt of whole panels, drawn once per built dish
 */
public record Mirror(
        String material,
        double reflectance,
        double scattered,
        double slopeErrorRadians,
        double beamSpreadRadians,
        double wideShare,
        double wideSpreadRadians,
        double dust,
        double panelTiltRadians) {
    /** Checks every figure. */
    public Mirror {
        RangeCheck.require(reflectance >= 0 && reflectance <= 1, "reflectance", reflectance, "0 to 1");
        RangeCheck.require(scattered >= 0 && scattered <= 1, "scattered", scattered, "0 to 1");
        RangeCheck.require(slopeErrorRadians >= 0 && slopeErrorRadians <= 0.2, "slope error", slopeErrorRadians, ANGLE);
        RangeCheck.require(beamSpreadRadians >= 0 && beamSpreadRadians <= 0.2, "beam spread", beamSpreadRadians, ANGLE);
        RangeCheck.require(wideShare >= 0 && wideShare <= 1, "wide share", wideShare, "0 to 1");
        RangeCheck.require(wideSpreadRadians >= 0 && wideSpreadRadians <= 0.2, "wide spread", wideSpreadRadians, ANGLE);
        RangeCheck.require(dust >= 0 && dust < 1, "dust", dust, "0 to below 1");
        RangeCheck.require(panelTiltRadians >= 0 && panelTiltRadians <= 0.2, "panel tilt", panelTiltRadians, ANGLE);
    }

    private static final String ANGLE = "0 to 0.2 rad";

    /** A mirror of the given reflectance and slope error and no other flaw. */
    public static Mirror plain(double reflectance, double slopeErrorRadians) {
        return new Mirror("own figures", reflectance, 0, slopeErrorRadians, 0, 0, 0, 0, 0);
    }

    /** Share of unshaded light that goes into the mirror or is lost to dust. */
    public double lostShare() {
        return dust + (1 - dust) * (1 - reflectance);
    }

    /** Share of unshaded light that leaves the mirror diffusely. */
    public double scatteredShare() {
        return (1 - dust) * reflectance * scattered;
    }

    /** Share of unshaded light that leaves the mirror as a beam. */
    public double reflectedShare() {
        return (1 - dust) * reflectance * (1 - scattered);
    }

    /** The same with another reflectance, 0 to 1. */
    public Mirror withReflectance(double share) {
        return new Mirror(
                material,
                share,
                scattered,
                slopeErrorRadians,
                beamSpreadRadians,
                wideShare,
                wideSpreadRadians,
                dust,
                panelTiltRadians);
    }

    /** The same with another scattered share, 0 to 1. */
    public Mirror withScattered(double share) {
        return new Mirror(
                material,
                reflectance,
                share,
                slopeErrorRadians,
                beamSpreadRadians,
                wideShare,
                wideSpreadRadians,
                dust,
                panelTiltRadians);
    }

    /** The same with another slope error, rad. */
    public Mirror withSlopeError(double radians) {
        return new Mirror(
                material,
                reflectance,
                scattered,
                radians,
                beamSpreadRadians,
                wideShare,
                wideSpreadRadians,
                dust,
                panelTiltRadians);
    }

    /** The same with another beam spread of the sharp part, rad. */
    public Mirror withBeamSpread(double radians) {
        return new Mirror(
                material,
                reflectance,
                scattered,
                slopeErrorRadians,
                radians,
                wideShare,
                wideSpreadRadians,
                dust,
                panelTiltRadians);
    }

    /** The same with another share that takes the wide spread, 0 to 1. */
    public Mirror withWideShare(double share) {
        return new Mirror(
                material,
                reflectance,
                scattered,
                slopeErrorRadians,
                beamSpreadRadians,
                share,
                wideSpreadRadians,
                dust,
                panelTiltRadians);
    }

    /** The same with another share lost to dust, 0 to below 1. */
    public Mirror withDust(double share) {
        return new Mirror(
                material,
                reflectance,
                scattered,
                slopeErrorRadians,
                beamSpreadRadians,
                wideShare,
                wideSpreadRadians,
                share,
                panelTiltRadians);
    }

    /** The same with another panel tilt, rad. */
    public Mirror withPanelTilt(double radians) {
        return new Mirror(
                material,
                reflectance,
                scattered,
                slopeErrorRadians,
                beamSpreadRadians,
                wideShare,
                wideSpreadRadians,
                dust,
                radians);
    }
}
