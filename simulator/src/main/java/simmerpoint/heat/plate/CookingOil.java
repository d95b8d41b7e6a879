package simmerpoint.heat.plate;

import simmerpoint.heat.PhysicalConstants;

/**
 * Refined oil for frying. Its properties are those of sunflower or rapeseed oil in handbooks, from memory: good to a tenth. Deep
 * frying takes 160 to 180 °C; such oils smoke from 204 to 238 °C (copy of an encyclopedia's table of smoke points).
 */
public final class CookingOil {
    /** Upper end of deep frying: copy of an encyclopedia's table, °C. */
    public static final double FRYING_CELSIUS = 180;

    /** Lower end, °C. */
    public static final double SLOW_FRYING_CELSIUS = 160;

    /** Refined oils smoke from here on, °C. */
    public static final double SMOKE_CELSIUS = 204;

    /** Above such oil its vapour can be lit, °C: from memory, 315 to 330. */
    public static final double FLASH_CELSIUS = 315;

    /** At 20 °C, kg/m³. */
    public static final double DENSITY = 920;

    private static final double SPECIFIC_HEAT_AT_20 = 1970;
    private static final double SPECIFIC_HEAT_SLOPE = 3.4;

    /** Of hot oil: W/(m K), m²/s twice, 1/K. */
    private static final double CONDUCTIVITY = 0.15;

    private static final double VISCOSITY = 3e-6;
    private static final double DIFFUSIVITY = 7.3e-8;
    private static final double EXPANSION = 7.5e-4;

    private static final double STEP = 0.5;
    private static final double HOTTEST_KELVIN = 600;

    private CookingOil() {}

    /** Specific heat, J/(kg K). */
    public static double specificHeat(double celsius) {
        return SPECIFIC_HEAT_AT_20 + SPECIFIC_HEAT_SLOPE * (celsius - 20);
    }

    /**
     * Coefficient from a bottom so much hotter than hot oil, W/(m² K): h = 0.15 k (g β ΔT/(ν α))^⅓, as {@link WaterContact} below
     * boiling.
     */
    static double freeConvection(double kelvin) {
        double lift = PhysicalConstants.GRAVITY * EXPANSION * Math.abs(kelvin);
        return 0.15 * CONDUCTIVITY * Math.cbrt(lift / (VISCOSITY * DIFFUSIVITY));
    }

    /** Heat into oil of that temperature over the bottom's temperature. */
    static FluxCurve contact(double oilCelsius) {
        return FluxCurve.of(oilCelsius - 1, oilCelsius + HOTTEST_KELVIN, STEP, t -> {
            double kelvin = t - oilCelsius;
            return kelvin * freeConvection(kelvin);
        });
    }
}
