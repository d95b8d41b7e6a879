package simmerpoint.heat;

/**
 * Pan and water as one body of one temperature that loses heat by a {@link LossModel} and cannot get hotter than local
 * boiling: what comes in beyond the losses there turns into steam.
 *
 * @param losses what leaves below boiling
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
    public static PotModel of(ThermalPan vessel, PanContents contents, Surroundings around, LossFactors factors) {
        return new PotModel(
                new PanLosses(vessel, contents.waterKilograms(), around, factors),
                vessel.heatCapacity(),
                contents.waterKilograms(),
                around.boilingCelsius());
    }

    /** Heat capacity with so much water, J/K. */
    public double heatCapacity(double water) {
        return emptyHeatCapacity + water * PhysicalConstants.WATER_SPECIFIC_HEAT;
    }

    /** Heat above a pan and water of 0 °C, J. */
    double heatContent(double celsius, double water) {
        return heatCapacity(water) * celsius;
    }

    /** What is left to warm pan and water at that temperature, W; below 0 they cool. */
    public double surplusWatts(double celsius, AbsorbedLight absorbed) {
        return absorbed.total() - losses.at(celsius, absorbed).total();
    }

    /** Water that turns into so many watts of steam, kg/s. */
    static double steamRate(double steamWatts, double celsius) {
        return steamWatts / SaturatedWater.latentHeatJoulesPerKilogram(celsius);
    }
}
