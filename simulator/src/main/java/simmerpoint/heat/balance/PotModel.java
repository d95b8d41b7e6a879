package simmerpoint.heat.balance;

import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.ArgumentChecks;
import simmerpoint.heat.PanContents;
import simmerpoint.heat.PhysicalConstants;
import simmerpoint.heat.SaturatedWater;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.heat.losses.LossModel;
import simmerpoint.heat.losses.PanLosses;

/**
 * Lumped model of pan and water: one temperature, losses by a {@link LossModel}, and local boiling as upper limit, where
 * surplus heat turns into steam.
 *
 * @param losses below boiling
 * @param emptyHeatCapacity of the pan, J/K, at least 0
 * @param waterKilograms at the start, above 0
 * @param boilingCelsius local boiling point, °C
 */
public record PotModel(LossModel losses, double emptyHeatCapacity, double waterKilograms, double boilingCelsius) {
    /** Checks the figures. */
    public PotModel {
        ArgumentChecks.notNegative("heat capacity", emptyHeatCapacity, "J/K");
        ArgumentChecks.positive("water", waterKilograms, "kg");
        ArgumentChecks.within("boiling point", boilingCelsius, 50, 110, "°C");
    }

    /** A real pan in real weather. */
    public static PotModel of(ThermalPan vessel, PanContents contents, Surroundings surroundings, LossFactors factors) {
        return new PotModel(
                new PanLosses(vessel, contents.waterKilograms(), surroundings, factors),
                vessel.heatCapacity(),
                contents.waterKilograms(),
                surroundings.boilingCelsius());
    }

    /** Heat capacity with an amount of water in kg, J/K. */
    public double heatCapacity(double water) {
        return emptyHeatCapacity + water * PhysicalConstants.WATER_SPECIFIC_HEAT;
    }

    /** Heat content relative to 0 °C, J. */
    double heatContent(double celsius, double water) {
        return heatCapacity(water) * celsius;
    }

    /** Absorbed light minus losses at a temperature, W. */
    public double surplusWatts(double celsius, AbsorbedLight absorbed) {
        return absorbed.total() - losses.at(celsius, absorbed).total();
    }

    /**
     * Net heat flow into the water alone at a temperature, W: what is left of the absorbed light after the losses, times the
     * water's share of the heat capacity, since a standard test counts m·c·dT/dt of the water. Below 0 if the pan cools.
     */
    public double waterHeatWatts(double celsius, AbsorbedLight absorbed) {
        double ofWater = waterKilograms * PhysicalConstants.WATER_SPECIFIC_HEAT / heatCapacity(waterKilograms);
        return ofWater * surplusWatts(celsius, absorbed);
    }

    /** Evaporation rate for a latent heat flow, kg/s. */
    public static double steamRate(double steamWatts, double celsius) {
        return steamWatts / SaturatedWater.latentHeatJoulesPerKilogram(celsius);
    }
}
