package simmerpoint.dish.built;

import java.util.List;

/**
 * Depths measured on the ribs of a finished dish, below the plane of the rim.
 *
 * @param radii distances from the axis, rising, m
 * @param depths of each rib at these distances, m; the first rib is the dish's upper edge, the others follow anticlockwise as seen
 *     from the sun
 */
public record RibMeasurements(List<Double> radii, List<List<Double>> depths) {
    /** Keeps copies; refuses ribs without a depth for every distance. */
    public RibMeasurements {
        radii = List.copyOf(radii);
        depths = depths.stream().map(List::copyOf).toList();
        for (List<Double> rib : depths) {
            if (rib.size() != radii.size()) {
                throw new IllegalArgumentException(rib.size() + " depths at " + radii.size() + " distances");
            }
        }
    }

    /** How many ribs were measured. */
    public int ribs() {
        return depths.size();
    }
}
