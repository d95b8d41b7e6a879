package simmerpoint.safety.parked;

import java.util.List;
import simmerpoint.geometry.Vec;

/**
 * The light of a parked dish at one moment.
 *
 * @param flux hottest light of mirrors and sun together anywhere in the yard, W/m²
 * @param standardError of it
 * @param place where that is: x level to where the dish faces, y right of that, z up, from the ground under the mount, m
 * @param groundFlux most on the ground, sun included, W/m²
 * @param smoulderReach farthest level distance from under the mount at which wood left for long smoulders, m; 0 for none
 * @param things light of mirrors and sun together on the things asked about, in their order, W/m²
 */
public record ParkedSpot(
        double flux, double standardError, Vec place, double groundFlux, double smoulderReach, List<Double> things) {
    /** Keeps a copy of the list. */
    public ParkedSpot {
        things = List.copyOf(things);
    }

    /** No light of the mirrors at all. */
    static final ParkedSpot NONE = new ParkedSpot(0, 0, Vec.ZERO, 0, 0, List.of());
}
