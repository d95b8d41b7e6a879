package simmerpoint.heat;

/**
 * A heat level with its spread: four in five pans like this one are between lowest and highest.
 *
 * @param lowest for a pan that loses much
 * @param likely for the likely losses
 * @param highest for a pan that loses little
 */
public record HeatLevelRange(HeatLevel lowest, HeatLevel likely, HeatLevel highest) {}
