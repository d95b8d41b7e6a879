package simmerpoint.heat;

import simmerpoint.sun.StandardAtmosphere;

/**
 * Boiling point of water by altitude: air pressure of the {@link StandardAtmosphere}, then the saturation line of {@link
 * SaturatedWater}. Weather changes the pressure by some 2 %
 * and so the boiling point by 0.5 K; salt and sugar in food raise it by less than 1 K.
 */
public final class BoilingPoint {
    private BoilingPoint() {}

    /**
     * Air pressure of the standard atmosphere, Pa.
     *
     * @param altitudeMetres −1000 to 11 000 m
     */
    public static double pressurePascals(double altitudeMetres) {
        ArgumentChecks.within("altitude", altitudeMetres, -1000, 11_000, "m");
        return StandardAtmosphere.at(altitudeMetres).pressurePascals();
    }

    /**
     * Boiling point, °C.
     *
     * @param altitudeMetres −1000 to 11 000 m
     */
    public static double celsius(double altitudeMetres) {
        return SaturatedWater.saturationKelvin(pressurePascals(altitudeMetres)) - PhysicalConstants.ZERO_CELSIUS;
    }
}
