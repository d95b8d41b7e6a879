package simmerpoint.heat;

/**
 * Steam from a pan that has settled, kg/h.
 *
 * @param all what leaves the pan: by boiling, and from the surface or past the lid without it
 * @param boiled what boiling alone makes, beyond what the surface gives off just below boiling: the bubbles a cook sees;
 *     0 if it does not boil
 */
public record SteamRates(LikelyRange all, LikelyRange boiled) {}
