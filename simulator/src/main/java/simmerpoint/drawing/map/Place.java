package simmerpoint.drawing.map;

/**
 * A place on a flux map, in the axes of {@link simmerpoint.target.FluxMaps}.
 *
 * @param first along the map's first axis, m
 * @param second along its second, m
 */
public record Place(double first, double second) {}
