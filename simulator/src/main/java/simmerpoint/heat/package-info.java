/**
 * Heating of pan and water by absorbed light: losses, local boiling point, temperature history, heat levels, frying, and
 * the heat input of household hobs for comparison.
 *
 * <p>Temperatures are °C wherever a name ends in {@code Celsius} and K wherever it ends in {@code Kelvin}; a difference
 * of temperatures is always K. Powers are W, energies J, times s, masses kg.
 *
 * <p>A pan's loss is known to a third at best. So results are computed for a fixed sample of losses ({@link
 * simmerpoint.heat.LossSpread}) and given as a {@link simmerpoint.heat.LikelyRange}.
 */
package simmerpoint.heat;
