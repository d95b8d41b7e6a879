package simmerpoint.heat;

/** Physical constants, each with its source. */
public final class PhysicalConstants {
    /** Stefan-Boltzmann constant, W/(m² K⁴): CODATA 2018, exact digits cut after ten. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    /** Standard gravity, m/s²: 3rd General Conference on Weights and Measures, 1901. */
    public static final double GRAVITY = 9.80665;

    /** 0 °C in K: definition of the Celsius scale. */
    public static final double ZERO_CELSIUS = 273.15;

    /** Pressure of the standard atmosphere at sea level, Pa: ISO 2533:1975. */
    public static final double STANDARD_PRESSURE = 101_325;

    /** Specific heat of water, J/(kg K): value fixed by ASAE S580; within 0.9 % from 0 to 100 °C. */
    public static final double WATER_SPECIFIC_HEAT = 4186;

    /** Gas constant of dry air, J/(kg K): ISO 2533:1975. */
    public static final double AIR_GAS_CONSTANT = 287.05287;

    /** Litres and kilograms of water are taken as equal here: density, kg/m³; up to 4 % high near boiling. */
    public static final double WATER_DENSITY = 1000;

    private PhysicalConstants() {}

    /** A Celsius temperature in K. */
    public static double kelvin(double celsius) {
        return celsius + ZERO_CELSIUS;
    }
}
