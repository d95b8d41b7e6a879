package simmerpoint.heat.losses;

import simmerpoint.heat.ArgumentChecks;
import simmerpoint.heat.PhysicalConstants;

/**
 * Properties of dry air at a film temperature. Viscosity and conductivity by Sutherland's law with the constants of White,
 * Viscous Fluid Flow (from memory; 2 % and 3 % from 200 to 1900 K), density of an ideal gas, specific heat 1007 J/(kg K)
 * (within 1 % from 250 to 450 K). Neglects water vapour: under 1 % outdoors.
 *
 * @param kelvin film temperature, K: mean of surface and air
 * @param conductivity W/(m K)
 * @param viscosity kinematic, m²/s
 * @param diffusivity thermal, m²/s
 */
public record AirFilm(double kelvin, double conductivity, double viscosity, double diffusivity) {
    private static final double SPECIFIC_HEAT = 1007;

    /**
     * Air at a film temperature and pressure.
     *
     * @param kelvin 200 to 2000 K
     * @param pascals above 0
     */
    public static AirFilm at(double kelvin, double pascals) {
        ArgumentChecks.within("film temperature", kelvin, 200, 2000, "K");
        double density = pascals / (PhysicalConstants.AIR_GAS_CONSTANT * kelvin);
        double dynamic = sutherland(1.716e-5, 111, kelvin);
        double conductivity = sutherland(0.0241, 194, kelvin);
        return new AirFilm(kelvin, conductivity, dynamic / density, conductivity / (density * SPECIFIC_HEAT));
    }

    private static double sutherland(double atZero, double constant, double kelvin) {
        double ratio = kelvin / 273;
        return atZero * ratio * Math.sqrt(ratio) * (273 + constant) / (kelvin + constant);
    }

    /** Viscosity ÷ thermal diffusivity. */
    public double prandtl() {
        return viscosity / diffusivity;
    }

    /**
     * Rayleigh number g·ΔT·L³/(T·ν·α), with the expansion 1/T of an ideal gas.
     *
     * @param kelvinDifference between surface and air; its sign is ignored
     * @param lengthMetres the characteristic length of the correlation
     */
    public double rayleigh(double kelvinDifference, double lengthMetres) {
        double cube = lengthMetres * lengthMetres * lengthMetres;
        return PhysicalConstants.GRAVITY * Math.abs(kelvinDifference) * cube / (kelvin * viscosity * diffusivity);
    }

    /**
     * Reynolds number.
     *
     * @param metresPerSecond wind
     * @param lengthMetres the characteristic length of the correlation
     */
    public double reynolds(double metresPerSecond, double lengthMetres) {
        return metresPerSecond * lengthMetres / viscosity;
    }
}
