package simmerpoint.heat.plate;

import simmerpoint.heat.PhysicalConstants;

/**
 * Heat from the bottom of a pan into the water on it. Below boiling as above any warm level plate: h = 0.15 k (g β ΔT/(ν
 * α))^⅓ (McAdams 1954 and Lloyd and Moran 1974, from memory). Beyond the boiling point by Rohsenow's law of nucleate
 * boiling, 1952 (form and properties of water at 1 atm as in Incropera et al., chapter 10, from memory). The larger of the
 * two counts.
 */
public final class WaterContact {
    /** Constant of Rohsenow's law for water on ground stainless steel: Incropera et al., table 10.1, from memory. */
    public static final double GROUND_STEEL = 0.0132;

    /** Water at 20, 60, 90 and 100 °C: Incropera et al., table A.6, from memory. */
    private static final double[] CELSIUS = {20, 60, 90, 100};

    private static final double[] CONDUCTIVITY = {0.603, 0.654, 0.674, 0.680};
    private static final double[] VISCOSITY = {1.004e-6, 0.474e-6, 0.326e-6, 0.294e-6};
    private static final double[] DIFFUSIVITY = {0.144e-6, 0.159e-6, 0.166e-6, 0.168e-6};
    private static final double[] EXPANSION = {207e-6, 523e-6, 695e-6, 750e-6};

    private static final double DYNAMIC_VISCOSITY = 279e-6;
    private static final double LATENT_HEAT = 2257e3;
    private static final double LIQUID_DENSITY = 957.9;
    private static final double VAPOUR_DENSITY = 0.5955;
    private static final double SURFACE_TENSION = 0.0589;
    private static final double SPECIFIC_HEAT = 4217;
    private static final double PRANDTL = 1.76;

    private static final double STEP = 0.05;
    private static final double HOTTEST_KELVIN = 60;

    private WaterContact() {}

    /** Coefficient below boiling, W/(m² K), for a bottom so much hotter than water of that temperature. */
    public static double freeConvection(double waterCelsius, double kelvin) {
        double lift = PhysicalConstants.GRAVITY * in(EXPANSION, waterCelsius) * Math.abs(kelvin);
        double spread = in(VISCOSITY, waterCelsius) * in(DIFFUSIVITY, waterCelsius);
        return 0.15 * in(CONDUCTIVITY, waterCelsius) * Math.cbrt(lift / spread);
    }

    /** Flux of nucleate boiling at a bottom so much hotter than the boiling point, W/m²; 0 below. */
    public static double boiling(double excessKelvin, double surfaceConstant) {
        double lift = PhysicalConstants.GRAVITY * (LIQUID_DENSITY - VAPOUR_DENSITY) / SURFACE_TENSION;
        double drive = SPECIFIC_HEAT * Math.max(0, excessKelvin) / (surfaceConstant * LATENT_HEAT * PRANDTL);
        return DYNAMIC_VISCOSITY * LATENT_HEAT * Math.sqrt(lift) * drive * drive * drive;
    }

    /** Both as a curve over the bottom's temperature. */
    public static FluxCurve curve(double waterCelsius, double boilingCelsius) {
        return FluxCurve.of(waterCelsius - 1, boilingCelsius + HOTTEST_KELVIN, STEP, t -> {
            double kelvin = t - waterCelsius;
            double still = kelvin * freeConvection(waterCelsius, kelvin);
            return Math.max(still, boiling(t - boilingCelsius, GROUND_STEEL));
        });
    }

    private static double in(double[] values, double celsius) {
        int k = 0;
        while (k < CELSIUS.length - 2 && celsius > CELSIUS[k + 1]) {
            k++;
        }
        double share = (celsius - CELSIUS[k]) / (CELSIUS[k + 1] - CELSIUS[k]);
        return values[k] + Math.max(0, share) * (values[k + 1] - values[k]);
    }
}
