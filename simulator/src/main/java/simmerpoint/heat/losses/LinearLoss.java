package simmerpoint.heat.losses;

import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.ArgumentChecks;

/**
 * Losses proportional to the temperature above the air, for checks against closed forms.
 *
 * @param wattsPerKelvin at least 0
 * @param airCelsius air temperature, °C
 */
public record LinearLoss(double wattsPerKelvin, double airCelsius) implements LossModel {
    /** Checks both. */
    public LinearLoss {
        ArgumentChecks.notNegative("loss", wattsPerKelvin, "W/K");
        ArgumentChecks.within("air temperature", airCelsius, -60, 200, "°C");
    }

    @Override
    public Losses at(double waterCelsius, AbsorbedLight absorbed) {
        return new Losses(wattsPerKelvin * (waterCelsius - airCelsius), 0, 0);
    }
}
