package simmerpoint.safety.parked;

/**
 * The light of a dish with the sun so far off its axis.
 *
 * @param radians the angle
 * @param spot the worse of two, figure by figure: the sun above the axis, and beside it
 */
public record OffAxis(double radians, ParkedSpot spot) {}
