package simmerpoint.setup;

import simmerpoint.geometry.Vec;

/**
 * Projection of the cooker onto the vertical plane through the sun: points of the well-aimed frame become level distances
 * towards the sun from the tripod's centre, and heights above level ground. With α the axis' elevation, H the mount's
 * height and b the mount behind the vertex, (x, y, z) is seen at (b·cos α − x·sin α + z·cos α, H + b·sin α + x·cos α +
 * z·sin α) (derived here; the same frame as {@link StandGeometry}'s).
 *
 * @param elevationRadians elevation of the well-aimed axis, above 0 to π/2
 * @param mountBehindMetres the mount's distance behind the vertex
 * @param mountHeightMetres the mount's height above the ground
 */
public record SideView(double elevationRadians, double mountBehindMetres, double mountHeightMetres) {
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
        double along = mountBehindMetres + place.z();
        return new Place(along * level - place.x() * up, mountHeightMetres + along * up + place.x() * level);
    }

    /** The point the dish turns about. */
    public Place mount() {
        return new Place(0, mountHeightMetres);
    }
}
