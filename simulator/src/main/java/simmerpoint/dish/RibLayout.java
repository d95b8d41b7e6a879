package simmerpoint.dish;

/**
 * The ribs of a dish and the lengths into which a maker's errors along them fall. The array is not copied; nobody changes it.
 *
 * @param sectors number of ribs round the axis
 * @param borders distances from the axis at which those lengths begin and end, from hub to rim, m
 */
public record RibLayout(int sectors, double[] borders) {}
