package simmerpoint.heat;

/**
 * How absorptance falls towards grazing light.
 *
 * <p>Paint, enamel and soot-and-oil are a clear skin of refractive index 1.5 over something black: what the skin does not
 * mirror is taken up. So the share is (1 − R(i))/(1 − R(0)), R Fresnel's reflectance for unpolarised light (any textbook
 * of optics; the reading of a finish as such a skin is ours). It gives 0.95 at 60° and 0.78 at 75°, where a polynomial for
 * measured flat black in Duffie and Beckman, Solar Engineering of Thermal Processes, section 4.11, gives 0.93 and 0.77
 * (from memory). Bare metal behaves otherwise (it takes up a little more at 60 to 80°); it takes up little in any case,
 * and this law then errs on the low side by up to a fifth.
 */
public final class GrazingAbsorptance {
    private static final double INDEX = 1.5;
    private static final double STEEP = (INDEX - 1) * (INDEX - 1) / ((INDEX + 1) * (INDEX + 1));

    private GrazingAbsorptance() {}

    /**
     * Absorptance at an angle ÷ absorptance at steep incidence, 0 to 1.
     *
     * @param cosIncidence 0 (grazing) to 1 (square on)
     */
    public static double relativeAbsorptance(double cosIncidence) {
        ArgumentChecks.within("cosine of incidence", cosIncidence, 0, 1, "of 1");
        double inside = Math.sqrt(INDEX * INDEX - 1 + cosIncidence * cosIncidence);
        double across = (cosIncidence - inside) / (cosIncidence + inside);
        double along = (INDEX * INDEX * cosIncidence - inside) / (INDEX * INDEX * cosIncidence + inside);
        return (1 - (across * across + along * along) / 2) / (1 - STEEP);
    }
}
