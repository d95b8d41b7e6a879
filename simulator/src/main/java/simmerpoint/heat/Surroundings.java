package simmerpoint.heat;

/**
 * The air and sky about the pan.
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

    /** Half humid air under an open sky. */
    public static Surroundings outdoors(double airCelsius, double windMetresPerSecond, double altitudeMetres) {
        return new Surroundings(airCelsius, windMetresPerSecond, altitudeMetres, 0.5, true);
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

    /** Pressure of the vapour in the air, Pa. */
    public double vapourPascals() {
        return relativeHumidity * SaturatedWater.saturationPascals(airKelvin());
    }

    /**
     * Temperature of what a level face that looks up radiates to, K: the air's, or of a clear sky 0.0552·T^1.5 (Swinbank
     * 1963, Quarterly Journal of the Royal Meteorological Society 89, 339; from memory; some 5 K either way, and too cold
     * for damp air).
     */
    public double overheadKelvin() {
        double air = airKelvin();
        return openSky ? Math.min(air, 0.0552 * Math.pow(air, 1.5)) : air;
    }

    /** The same for an upright wall, which sees sky with half its view and ground as warm as the air with the other, K. */
    public double aroundKelvin() {
        double air = Math.pow(airKelvin(), 4);
        double above = Math.pow(overheadKelvin(), 4);
        return Math.pow((air + above) / 2, 0.25);
    }
}
