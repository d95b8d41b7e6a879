package simmerpoint.pan;

/**
 * Absorptance by angle of incidence.
 *
 * <p>Paint, enamel and soot with oil are modelled as a clear layer of refractive index n = 1.5 over a black base: light that
 * the layer does not reflect is absorbed. So the ratio to normal incidence is (1 − R(i))/(1 − R(0)), R Fresnel's reflectance
 * for unpolarised light (any textbook of optics; the model of a finish as such a layer is ours). It gives 0.95 at 60° and
 * 0.78 at 75°, where a polynomial for measured flat black in Duffie and Beckman, Solar Engineering of Thermal Processes,
 * section 4.11, gives 0.93 and 0.77 (from memory). For bare metal, which absorbs somewhat more at 60 to 80°, it is too low by
 * up to a fifth.
 *
 * <p>With c = cos i and s = √(n² − 1 + c²) the two polarisations transmit 4cs/(c + s)² and 4n²cs/(n²c + s)², so that the
 * ratio is 2cs·(b² + n²a²)/(a²b²) ÷ (1 − R(0)) with a = c + s, b = n²c + s: one root and one division, which vectorise.
 */
public final class GrazingAbsorptance {
    private static final double INDEX2 = 1.5 * 1.5;
    private static final double NORMAL_REFLECTANCE = 0.5 * 0.5 / (2.5 * 2.5);
    private static final double SCALE = 2 / (1 - NORMAL_REFLECTANCE);

    private GrazingAbsorptance() {}

    /**
     * Absorptance at an angle ÷ absorptance at normal incidence, 0 to 1.
     *
     * @param cosIncidence 0 (grazing) to 1 (normal)
     */
    public static double relativeAbsorptance(double cosIncidence) {
        if (!(cosIncidence >= 0 && cosIncidence <= 1)) {
            throw new IllegalArgumentException("cosine of incidence " + cosIncidence + " is outside 0 to 1");
        }
        return ofCosine(cosIncidence);
    }

    /** The same for {@code n} cosines at once, without a check; of a negative one the amount counts. */
    public static void fill(double[] cosines, int n, double[] out) {
        for (int i = 0; i < n; i++) {
            out[i] = ofCosine(Math.abs(cosines[i]));
        }
    }

    /** The same in single precision. */
    public static void fill(float[] cosines, int n, float[] out) {
        float index2 = (float) INDEX2;
        float scale = (float) SCALE;
        for (int i = 0; i < n; i++) {
            float c = Math.abs(cosines[i]);
            float s = (float) Math.sqrt(index2 - 1 + c * c);
            float a = c + s;
            float b = index2 * c + s;
            out[i] = scale * c * s * (b * b + index2 * a * a) / (a * a * b * b);
        }
    }

    private static double ofCosine(double c) {
        double s = Math.sqrt(INDEX2 - 1 + c * c);
        double a = c + s;
        double b = INDEX2 * c + s;
        return SCALE * c * s * (b * b + INDEX2 * a * a) / (a * a * b * b);
    }
}
