package simmerpoint.heat.balance;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.PhysicalConstants;
import simmerpoint.heat.losses.Losses;

/**
 * Equations of a pot below boiling in constant light: (m·c + C)·dT/dt = light − losses, dm/dt = −steam ÷ latent heat, and the
 * time integrals of every term. State: T in °C, m in kg, then J of light, convection, radiation, steam, carried.
 */
final class HeatingEquations implements FirstOrderDifferentialEquations {
    static final int CELSIUS = 0;
    static final int WATER = 1;
    static final int LIGHT = 2;
    static final int CONVECTION = 3;
    static final int RADIATION = 4;
    static final int STEAM = 5;
    static final int CARRIED = 6;
    static final int SIZE = 7;

    /** Limits of the vapour formulas, within which the losses are evaluated: trial steps may overshoot them. */
    private static final double COLDEST_CELSIUS = -42;

    private static final double BEYOND_KELVIN = 5;

    private final PotModel pot;
    private final AbsorbedLight absorbed;

    HeatingEquations(PotModel pot, AbsorbedLight absorbed) {
        this.pot = pot;
        this.absorbed = absorbed;
    }

    @Override
    public int getDimension() {
        return SIZE;
    }

    @Override
    public void computeDerivatives(double seconds, double[] y, double[] rate) {
        double celsius = Math.max(COLDEST_CELSIUS, Math.min(pot.boilingCelsius() + BEYOND_KELVIN, y[CELSIUS]));
        Losses losses = pot.losses().at(celsius, absorbed);
        double steamRate = PotModel.steamRate(losses.steamWatts(), celsius);
        rate[CELSIUS] = (absorbed.total() - losses.total()) / pot.heatCapacity(y[WATER]);
        rate[WATER] = -steamRate;
        rate[LIGHT] = absorbed.total();
        rate[CONVECTION] = losses.convectionWatts();
        rate[RADIATION] = losses.radiationWatts();
        rate[STEAM] = losses.steamWatts();
        rate[CARRIED] = steamRate * PhysicalConstants.WATER_SPECIFIC_HEAT * celsius;
    }
}
