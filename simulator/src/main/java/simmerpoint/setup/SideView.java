package simmerpoint.setup;

import simmerpoint.geometry.Vec;

/**
 * Projection of the cooker onto the vertical plane through the sun: points of the well-aimed frame become level distances
 * towards the sun from the tripod's centre, and heights above level ground. With α the axis' elevation, H the mount's
 * height, (x, y, z) from the mount is seen at (z·cos α − x·sin α, H + x·cos α + z·sin α) (derived here; the same frame as {@link
 * StandGeometry}'s).
 *
 * @param elevationRadians elevation of the well-aimed axis, above 0 to π/2
 * @param mountInDish the point the dish turns about, well-aimed frame, m
 * @param mountHeightMetres its height above the ground
 */
public record SideView(double elevationRadians, Vec mountInDish, double mountHeightMetres) {
    /**
     * A point of the side view.
     *
     * @param towardsSunMetres level distance towards the sun from the tripod's centre
     * @param heightMetres above the ground
     */
    public record Place(double towardsSunMetres, double heightMetres) {}

    /** Projection of a point of the well-aimed frame. */
    public Place of(Vec place) {
        double up = Math.sin(elevationRadians);
        double level = Math.cos(elevationRadians);
        double along = place.z() - mountInDish.z();
        double across = place.x() - mountInDish.x();
        return new Place(along * level - across * up, mountHeightMetres + along * up + across * level);
    }

    /** The point the dish turns about. */
    public Place mount() {
        return new Place(0, mountHeightMetres);
    }
}
