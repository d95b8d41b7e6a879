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
public record Kettle(LossModel losses, double emptyHeatCapacity, double waterKilograms, double boilingCelsius) {
    /** Checks the figures. */
    public Kettle {
        Checks.notNegative("heat capacity", emptyHeatCapacity, "J/K");
        Checks.positive("water", waterKilograms, "kg");
        Checks.within("boiling point", boilingCelsius, 50, 110, "°C");
    }

    /** A real pan in real weather. */
    public static Kettle of(Vessel vessel, Contents contents, Surroundings around, LossFactors factors) {
        return new Kettle(
                new PanLosses(vessel, contents.waterKilograms(), around, factors),
                vessel.heatCapacity(),
                contents.waterKilograms(),
                around.boilingCelsius());
    }

    /** Heat capacity with so much water, J/K. */
    public double heatCapacity(double water) {
        return emptyHeatCapacity + water * Constants.WATER_SPECIFIC_HEAT;
    }

    /** Heat above a pan and water of 0 °C, J. */
    double heatContent(double celsius, double water) {
        return heatCapacity(water) * celsius;
    }

    /** What is left to warm pan and water at that temperature, W; below 0 they cool. */
    public double surplusWatts(double celsius, Absorbed absorbed) {
        return absorbed.total() - losses.at(celsius, absorbed).total();
    }

    /** Water that turns into so many watts of steam, kg/s. */
    static double steamRate(double steamWatts, double celsius) {
        return steamWatts / Water.latentHeatJoulesPerKilogram(celsius);
    }
}
