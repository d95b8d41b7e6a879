package simmerpoint.heat;

/**
 * Absorptance by angle of incidence.
 *
 * <p>Paint, enamel and soot with oil are modelled as a clear layer of refractive index 1.5 over a black base: light that
 * the layer does not reflect is absorbed. So the ratio to normal incidence is (1 − R(i))/(1 − R(0)), R Fresnel's reflectance
 * for unpolarised light (any textbook of optics; the model of a finish as such a layer is ours). It gives 0.95 at 60° and
 * 0.78 at 75°, where a polynomial for measured flat black in Duffie and Beckman, Solar Engineering of Thermal Processes,
 * section 4.11, gives 0.93 and 0.77 (from memory). For bare metal, which absorbs somewhat more at 60 to 80°, it is too low by
 * up to a fifth.
 */
public final class GrazingAbsorptance {
    private static final double INDEX = 1.5;
    private static final double NORMAL_REFLECTANCE = (INDEX - 1) * (INDEX - 1) / ((INDEX + 1) * (INDEX + 1));

    private GrazingAbsorptance() {}

    /**
     * Absorptance at an angle ÷ absorptance at normal incidence, 0 to 1.
     *
     * @param cosIncidence 0 (grazing) to 1 (normal)
     */
    public static double relativeAbsorptance(double cosIncidence) {
        ArgumentChecks.within("cosine of incidence", cosIncidence, 0, 1, "of 1");
        double inside = Math.sqrt(INDEX * INDEX - 1 + cosIncidence * cosIncidence);
        double across = (cosIncidence - inside) / (cosIncidence + inside);
        double along = (INDEX * INDEX * cosIncidence - inside) / (INDEX * INDEX * cosIncidence + inside);
        return (1 - (across * across + along * along) / 2) / (1 - NORMAL_REFLECTANCE);
    }
}
