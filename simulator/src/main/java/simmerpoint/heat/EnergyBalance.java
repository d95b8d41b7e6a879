package simmerpoint.heat;

/**
 * Where the energy went since the start, J.
 *
 * @param absorbed light taken up
 * @param convection lost to the air
 * @param radiation lost to sky and surroundings
 * @param steam latent heat of the water that left
 * @param carried what that water had been warmed by: its heat above water of 0 °C
 * @param stored gained by pan and water, reckoned from 0 °C
 */
public record EnergyBalance(
        double absorbed, double convection, double radiation, double steam, double carried, double stored) {
    /** absorbed − all that left − stored: 0 but for the error of the integration. */
    public double residual() {
        return absorbed - convection - radiation - steam - carried - stored;
    }
}
