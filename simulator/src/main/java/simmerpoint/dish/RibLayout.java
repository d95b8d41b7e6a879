package simmerpoint.dish;

import java.util.Collections;
import java.util.List;

/**
 * The ribs of a dish and the lengths between which errors along a rib are independent. The array is shared and not
 * modified.
 *
 * @param ends how far from the axis each rib carries mirror, m, the first at the upper edge, then anticlockwise as seen from the sun; 0
 *     for one that would carry none
 * @param curved whether their edges follow the parabola; else they are straight from border to border
 * @param borders distances from the axis at which those lengths begin and end, from hub to rim, m
 */
public record RibLayout(List<Double> ends, boolean curved, double[] borders) {
    /** Keeps a copy of the ends. */
    public RibLayout {
        ends = List.copyOf(ends);
    }

    /** Of a round dish that goes all round. */
    public RibLayout(int sectors, boolean curved, double[] borders) {
        this(Collections.nCopies(sectors, borders[borders.length - 1]), curved, borders);
    }

    /** Number of ribs round the axis of a dish that goes all round. */
    public int sectors() {
        return ends.size();
    }

    /** How many of them carry a mirror. */
    public int standing() {
        return (int) ends.stream().filter(end -> end > 0).count();
    }

    /** Where the longest of them ends, m from the axis: depths are measured from the level of its tip. */
    public double longest() {
        return ends.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    /** The same with other ends. */
    public RibLayout withEnds(List<Double> others) {
        return new RibLayout(others, curved, borders);
    }
}
