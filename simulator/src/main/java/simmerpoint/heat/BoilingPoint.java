package simmerpoint.heat;

/**
 * Boiling point of water by altitude. Air pressure by the standard atmosphere of ISO 2533:1975 up to 11 km, p = 101 325 Pa ·
 * (1 − 0.0065 h/288.15)^5.25588, then the saturation line of {@link SaturatedWater}. Weather changes the pressure by some 2 %
 * and so the boiling point by 0.5 K; salt and sugar in food raise it by less than 1 K.
 */
public final class BoilingPoint {
    private static final double LAPSE_PER_KELVIN = 0.0065 / 288.15;
    private static final double EXPONENT = 5.25588;

    private BoilingPoint() {}

    /**
     * Air pressure of the standard atmosphere, Pa.
     *
     * @param altitudeMetres −1000 to 11 000 m
     */
    public static double pressurePascals(double altitudeMetres) {
        ArgumentChecks.within("altitude", altitudeMetres, -1000, 11_000, "m");
        return PhysicalConstants.STANDARD_PRESSURE * Math.pow(1 - LAPSE_PER_KELVIN * altitudeMetres, EXPONENT);
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
