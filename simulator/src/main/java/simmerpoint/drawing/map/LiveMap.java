package simmerpoint.drawing.map;

import java.util.Optional;

/**
 * What a map shows of somebody who reads it.
 *
 * @param earlier whether it is that of an earlier scenario
 * @param key whether marks are explained beside the map, where there is room
 * @param reading the place that is read; empty if none
 */
public record LiveMap(boolean earlier, boolean key, Optional<Place> reading) {}
