package simmerpoint.heat;

/**
 * Air and sky around the pan.
 *
 * @param airCelsius air temperature, −30 to 60 °C
 * @param windMetresPerSecond wind at the height of the pan, 0 to 20 m/s (a weather report's wind, at 10 m, is about
 *     twice that behind a garden's hedges: common practice)
 * @param altitudeMetres above sea level, −500 to 9000 m
 * @param relativeHumidity 0 to 1
 * @param openSky true if lid and wall face a clear sky, which is colder than the air; false under a roof or cloud
 */
public record Surroundings(
        double airCelsius,
        double windMetresPerSecond,
        double altitudeMetres,
        double relativeHumidity,
        boolean openSky) {
    /** Checks all figures. */
    public Surroundings {
        ArgumentChecks.within("air temperature", airCelsius, -30, 60, "°C");
        ArgumentChecks.within("wind", windMetresPerSecond, 0, 20, "m/s");
        ArgumentChecks.within("altitude", altitudeMetres, -500, 9000, "m");
        ArgumentChecks.within("relative humidity", relativeHumidity, 0, 1, "of 1");
    }

    /** Air of 50 % relative humidity under an open sky. */
    public static Surroundings outdoors(double airCelsius, double windMetresPerSecond, double altitudeMetres) {
        return new Surroundings(airCelsius, windMetresPerSecond, altitudeMetres, 0.5, true);
    }

    /** The same where no wind comes. */
    public Surroundings withoutWind() {
        return withWind(0);
    }

    /** The same with another wind, m/s. */
    public Surroundings withWind(double metresPerSecond) {
        return new Surroundings(airCelsius, metresPerSecond, altitudeMetres, relativeHumidity, openSky);
    }

    /** Air temperature, K. */
    public double airKelvin() {
        return PhysicalConstants.kelvin(airCelsius);
    }

    /** Air pressure by {@link BoilingPoint#pressurePascals}, Pa. */
    public double pressurePascals() {
        return BoilingPoint.pressurePascals(altitudeMetres);
    }

    /** Local boiling point, °C. */
    public double boilingCelsius() {
        return BoilingPoint.celsius(altitudeMetres);
    }

    /** Vapour pressure of the air, Pa. */
    public double vapourPascals() {
        return relativeHumidity * SaturatedWater.saturationPascals(airKelvin());
    }

    /**
     * Effective temperature of the sky for a level face, K: the air's, or of a clear sky 0.0552·T^1.5 (Swinbank 1963,
     * Quarterly Journal of the Royal Meteorological Society 89, 339; from memory; ± 5 K, and too low for humid air).
     */
    public double skyKelvin() {
        double air = airKelvin();
        return openSky ? Math.min(air, 0.0552 * Math.pow(air, 1.5)) : air;
    }

    /** The same for a vertical wall, K: half of its view is sky, half is ground at the air's temperature. */
    public double wallRadiantKelvin() {
        double air = Math.pow(airKelvin(), 4);
        double above = Math.pow(skyKelvin(), 4);
        return Math.pow((air + above) / 2, 0.25);
    }
}
