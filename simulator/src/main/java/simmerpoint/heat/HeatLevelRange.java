package simmerpoint.heat;

/**
 * A heat level with its 10th and 90th percentile over the sample of losses.
 *
 * @param lowest 10th percentile
 * @param likely for the likely losses
 * @param highest 90th percentile
 */
public record HeatLevelRange(HeatLevel lowest, HeatLevel likely, HeatLevel highest) {}
