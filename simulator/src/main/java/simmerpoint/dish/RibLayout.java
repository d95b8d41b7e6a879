package simmerpoint.dish;

/**
 * The ribs of a dish and the lengths between which errors along a rib are independent. The array is shared and not
 * modified.
 *
 * @param sectors number of ribs round the axis
 * @param curved whether their edges follow the parabola; else they are straight from border to border
 * @param borders distances from the axis at which those lengths begin and end, from hub to rim, m
 */
public record RibLayout(int sectors, boolean curved, double[] borders) {}
