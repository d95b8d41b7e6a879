package simmerpoint.heat;

import simmerpoint.uncertainty.LikelyRange;

/**
 * Steam of a pan in steady state, kg/h.
 *
 * @param all by boiling, and by evaporation from the surface or through the lid's gap
 * @param boiled by boiling alone; 0 if it does not boil
 */
public record SteamRates(LikelyRange all, LikelyRange boiled) {}
