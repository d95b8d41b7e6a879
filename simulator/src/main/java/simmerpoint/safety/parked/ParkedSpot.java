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
 * @param wallFlux most on things 1 m or more from under the mount, measured level: what a wall there gets at most, sun
 *     included, W/m²
 * @param standFlux most on what holds the pan up, sun included, W/m²; 0 where it is not told of
 * @param smoulderReach farthest level distance from under the mount at which wood left for long smoulders, m; 0 for none
 * @param things light of mirrors and sun together on the things asked about, in their order, W/m²
 */
public record ParkedSpot(
        double flux,
        double standardError,
        Vec place,
        double groundFlux,
        double wallFlux,
        double standFlux,
        double smoulderReach,
        List<Double> things) {
    /** How far from under the mount the wall is, level, m. */
    public static final double WALL_METRES = 1;

    /** Keeps a copy of the list. */
    public ParkedSpot {
        things = List.copyOf(things);
    }

    /** The worse of this and another, each figure by itself; the things are those of the hotter. */
    ParkedSpot or(ParkedSpot other) {
        ParkedSpot hotter = flux > other.flux ? this : other;
        return new ParkedSpot(
                hotter.flux,
                hotter.standardError,
                hotter.place,
                Math.max(groundFlux, other.groundFlux),
                Math.max(wallFlux, other.wallFlux),
                Math.max(standFlux, other.standFlux),
                Math.max(smoulderReach, other.smoulderReach),
                hotter.things);
    }

    /** No light of the mirrors at all. */
    static final ParkedSpot NONE = new ParkedSpot(0, 0, Vec.ZERO, 0, 0, 0, 0, List.of());
}
