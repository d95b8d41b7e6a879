package simmerpoint.heat.balance;

/**
 * Energy balance since the start, J.
 *
 * @param absorbed absorbed light
 * @param convection lost to the air
 * @param radiation lost to sky and surroundings
 * @param steam latent heat of the evaporated water
 * @param carried sensible heat of the evaporated water above 0 °C
 * @param stored gained by pan and water, relative to 0 °C
 */
public record EnergyBalance(
        double absorbed, double convection, double radiation, double steam, double carried, double stored) {}
