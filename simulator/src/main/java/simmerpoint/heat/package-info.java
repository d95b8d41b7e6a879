/**
 * What absorbed watts do to the pan and its water: losses, local boiling point, the heating curve, heat levels, frying,
 * and the watts of household hobs to compare with. Numbers go in, values come out; light, files and sentences belong
 * elsewhere.
 *
 * <p>Temperatures are °C wherever a name ends in {@code Celsius} and K wherever it ends in {@code Kelvin}; a difference
 * of temperatures is always K. Powers are W, energies J, times s, masses kg.
 *
 * <p>A pan's loss is known to a third at best. So every answer is worked out for a small fixed set of pans whose losses
 * differ as real ones do ({@link simmerpoint.heat.LossSpread}), and given as a {@link simmerpoint.heat.LikelyRange}.
 */
package simmerpoint.heat;
