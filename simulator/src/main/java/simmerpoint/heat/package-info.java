/**
 * Heating of pan and water by absorbed light. This package holds properties and results: pan, contents, surroundings, light on
 * the faces, heat levels, frying, hobs for comparison. Losses are in {@code losses}, the energy balance in {@code balance}.
 *
 * <p>Temperatures are °C wherever a name ends in {@code Celsius} and K wherever it ends in {@code Kelvin}; a difference
 * of temperatures is always K. Powers are W, energies J, times s, masses kg.
 *
 * <p>A pan's loss is known to a third at best. So results are computed for a fixed sample of losses and given as a {@link
 * simmerpoint.uncertainty.LikelyRange}.
 *
 * <p>Kept for logs of measured heating, although only tests use them yet: {@code balance.ParaboloidProtocol}, {@code
 * balance.StandardCookingPower}, {@code losses.LinearLoss} and {@code balance.CookingModel.temperatures}.
 */
package simmerpoint.heat;
