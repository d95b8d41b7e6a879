package simmerpoint.heat;

/** Water and its vapour along the saturation line. */
public final class SaturatedWater {
    /** Coefficients n1 to n10 of region 4: IAPWS R7-97 (2012), table 34. */
    private static final double[] N = {
        0.11670521452767e4,
        -0.72421316703206e6,
        -0.17073846940092e2,
        0.12020824702470e5,
        -0.32325550322333e7,
        0.14915108613530e2,
        -0.48232657361591e4,
        0.40511340542057e6,
        -0.23855557567849,
        0.65017534844798e3
    };

    private static final double LEAST_KELVIN = 230;
    private static final double MOST_KELVIN = 647.096;

    private SaturatedWater() {}

    /**
     * Saturation pressure. IAPWS Industrial Formulation 1997, region 4, equation 30; valid from 273.15 K to 647.096 K with an
     * error below 0.03 %. Extrapolated down to 230 K (supercooled water, within some percent), for pans in frosty air.
     *
     * @param kelvin 230 to 647.096 K
     * @return Pa
     */
    public static double saturationPascals(double kelvin) {
        ArgumentChecks.within("temperature", kelvin, LEAST_KELVIN, MOST_KELVIN, "K");
        double theta = kelvin + N[8] / (kelvin - N[9]);
        double a = (theta + N[0]) * theta + N[1];
        double b = (N[2] * theta + N[3]) * theta + N[4];
        double c = (N[5] * theta + N[6]) * theta + N[7];
        double root = 2 * c / (-b + Math.sqrt(b * b - 4 * a * c));
        return 1e6 * root * root * root * root;
    }

    /**
     * Saturation temperature, the inverse: equation 31 of the same standard.
     *
     * @param pascals 611.213 Pa to 22.064 MPa
     * @return K
     */
    public static double saturationKelvin(double pascals) {
        ArgumentChecks.within("pressure", pascals, 611.212, 22.064e6, "Pa");
        double beta = Math.sqrt(Math.sqrt(pascals / 1e6));
        double e = (beta + N[2]) * beta + N[5];
        double f = (N[0] * beta + N[3]) * beta + N[6];
        double g = (N[1] * beta + N[4]) * beta + N[7];
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N[9] + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N[8] + N[9] * d))) / 2;
    }

    /**
     * Latent heat of evaporation: 2500.9 − 2.32417 t − 0.00120833 t² kJ/kg, a parabola through 0, 40 and 100 °C of the steam
     * tables (2500.9, 2406.0, 2256.4 kJ/kg, from memory); within 0.05 % of their other rows from 0 to 100 °C, 0.12 % high at
     * 120 °C.
     *
     * @param celsius −40 to 120 °C
     * @return J/kg
     */
    public static double latentHeatJoulesPerKilogram(double celsius) {
        ArgumentChecks.within("temperature", celsius, -40, 120, "°C");
        return 1000 * (2500.9 - (2.32417 + 0.00120833 * celsius) * celsius);
    }
}
