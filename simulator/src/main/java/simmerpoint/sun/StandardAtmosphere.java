package simmerpoint.sun;

/**
 * Air at the ground, for refraction and boiling.
 *
 * @param pressurePascals pressure, Pa, above 0
 * @param temperatureKelvin temperature, K, above 0
 */
public record StandardAtmosphere(double pressurePascals, double temperatureKelvin) {
    /** Temperature at sea level of the International Standard Atmosphere, K (ISO 2533:1975). */
    private static final double SEA_LEVEL_KELVIN = 288.15;

    /** Pressure at sea level of the International Standard Atmosphere, Pa (ISO 2533:1975). */
    private static final double SEA_LEVEL_PASCALS = 101325;

    /** Fall of temperature with height up to 11 km, K/m (ISO 2533:1975). */
    private static final double LAPSE = 0.0065;

    /** Exponent g/(R·lapse) of the barometric formula, from the figures of ISO 2533:1975. */
    private static final double EXPONENT = 5.25588;

    /**
     * The International Standard Atmosphere at {@code altitudeMetres} (m above the sea, up to 11 km). Weather changes the
     * pressure by some 3 % and the temperature by some 20 K; for a sun at 10° that changes refraction by under 0.01°.
     */
    public static StandardAtmosphere at(double altitudeMetres) {
        double kelvin = SEA_LEVEL_KELVIN - LAPSE * altitudeMetres;
        return new StandardAtmosphere(SEA_LEVEL_PASCALS * Math.pow(kelvin / SEA_LEVEL_KELVIN, EXPONENT), kelvin);
    }

    double hectopascals() {
        return pressurePascals / 100;
    }

    double celsius() {
        return temperatureKelvin - 273.15;
    }
}
