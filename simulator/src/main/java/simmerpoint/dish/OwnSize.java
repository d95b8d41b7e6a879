package simmerpoint.dish;

/**
 * The size of a dish that its cut knows by itself, see {@link CutTrait#OWN_SIZE}.
 *
 * @param diameterMetres of the circle about its mirrors, seen along the axis
 * @param focalLengthMetres vertex to nominal focus
 */
public record OwnSize(double diameterMetres, double focalLengthMetres) {}
