package simmerpoint.trial.power;

import simmerpoint.heat.PhysicalConstants;
import simmerpoint.heat.ThermalPan;
import simmerpoint.scenario.CookingSetup;

/**
 * What must be known of pan and dish to make figures of a log.
 *
 * @param waterKilograms the load
 * @param emptyHeatCapacity of the pan alone, J/K
 * @param area of the pan's outside, lid included, m²
 * @param apertureArea of the mirrors along the axis, m²
 * @param airCelsius the air where the log does not say
 * @param boilingCelsius local boiling point
 */
public record HeatedPan(
        double waterKilograms,
        double emptyHeatCapacity,
        double area,
        double apertureArea,
        double airCelsius,
        double boilingCelsius) {
    /** Of a scenario's pan. */
    public static HeatedPan of(CookingSetup kitchen, double apertureArea) {
        ThermalPan vessel = kitchen.vessel();
        double wall = 2 * Math.PI * vessel.pan().radiusMetres() * vessel.pan().heightMetres();
        return new HeatedPan(
                kitchen.contents().waterKilograms(),
                vessel.heatCapacity(),
                2 * vessel.levelArea() + wall,
                apertureArea,
                kitchen.around().airCelsius(),
                kitchen.around().boilingCelsius());
    }

    /** Heat capacity of pan and water, J/K. */
    public double heatCapacity() {
        return emptyHeatCapacity + waterKilograms * PhysicalConstants.WATER_SPECIFIC_HEAT;
    }

    /** The water's share of it. */
    public double waterShare() {
        return waterKilograms * PhysicalConstants.WATER_SPECIFIC_HEAT / heatCapacity();
    }
}
