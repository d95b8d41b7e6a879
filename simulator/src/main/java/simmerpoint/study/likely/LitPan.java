package simmerpoint.study.likely;

import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.scenario.CookingSetup;

/**
 * The pan of one cooker in its light, for work that heats it in its own way.
 *
 * @param kitchen pan, water and weather
 * @param losses factors of its losses
 * @param absorbed what it takes up
 */
public record LitPan(CookingSetup kitchen, LossFactors losses, AbsorbedLight absorbed) {}
