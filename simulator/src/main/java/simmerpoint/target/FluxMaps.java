package simmerpoint.target;

import java.util.Optional;

/**
 * The flux maps of one target, all in the target frame: origin in the middle of the underside (or disc), z up for a pan
 * (for a bare disc: its normal, away from the dish), y the dish's +y, x = y × z (for a level pan: level, away from the
 * sun; for a disc square to the axis: the dish's +x). Seen from above.
 *
 * @param crossing all light that crosses the plane of the underside or disc from the dish's side, caught or not; axes
 *     x, y
 * @param caught the part of it that lands on the underside or disc, on the same grid
 * @param wall for a pan, its wall unrolled: first axis = radius × angle from +x over +y, second axis = height
 * @param lid for a pan, its lid: axes x, y
 */
public record FluxMaps(FluxMap crossing, FluxMap caught, Optional<FluxMap> wall, Optional<FluxMap> lid) {}
