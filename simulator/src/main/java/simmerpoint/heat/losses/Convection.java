package simmerpoint.heat.losses;

/**
 * Mean Nusselt numbers of the faces of a pan. Each correlation has an error of some 20 to 30 % for a simple shape in a
 * laboratory; for a real pan outdoors see {@link LossSpread}. Sources as in Incropera et al., Fundamentals of Heat and Mass
 * Transfer, chapters 7 and 9 (from memory). For a face colder than the air the number of one as much warmer is used: right
 * for the wall, approximate for level faces.
 */
public final class Convection {
    private Convection() {}

    /**
     * Natural convection at a vertical wall, laminar or turbulent: Churchill and Chu 1975, International Journal of Heat and
     * Mass Transfer 18, 1323. Rayleigh number up to 1e12 with the wall's height as length. A cylinder counts as flat where
     * diameter ÷ height is at least 35/Gr^0.25, so for any pan.
     */
    public static double wall(double rayleigh, double prandtl) {
        double root = 0.825 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / Math.pow(prandtlTerm(prandtl), 8.0 / 27);
        return root * root;
    }

    private static double prandtlTerm(double prandtl) {
        return 1 + Math.pow(0.492 / prandtl, 9.0 / 16);
    }

    /**
     * Natural convection above a level warm face: McAdams 1954, Heat Transmission, with the length area ÷ edge (a quarter of the
     * diameter): 0.54 Ra^¼ from 1e4 to 1e7, 0.15 Ra^⅓ up to 1e11; the larger of the two, which meet near 5e6.
     */
    public static double lid(double rayleigh) {
        return Math.max(0.54 * Math.pow(rayleigh, 0.25), 0.15 * Math.cbrt(rayleigh));
    }

    /**
     * Natural convection under a level warm face: 0.27 Ra^¼, McAdams 1954, same length, Rayleigh number 1e5 to 1e10. Later
     * measurements differ by up to 30 %.
     */
    public static double underside(double rayleigh) {
        return 0.27 * Math.pow(rayleigh, 0.25);
    }

    /**
     * Natural convection across the gap to a cover, times conduction; at least 1. See {@link CoveredFace} for the sources.
     *
     * @param kind of the warm face
     * @param rayleigh with the width of the gap as length
     * @param prandtl of the air
     * @param slenderness height of the gap ÷ its width
     */
    static double acrossGap(PanFace.Kind kind, double rayleigh, double prandtl, double slenderness) {
        return switch (kind) {
            case UNDERSIDE -> 1;
            case WALL ->
                Math.max(1, 0.42 * Math.pow(rayleigh, 0.25) * Math.pow(prandtl, 0.012) * Math.pow(slenderness, -0.3));
            case LID ->
                1 + 1.44 * Math.max(0, 1 - 1708 / Math.max(1, rayleigh)) + Math.max(0, Math.cbrt(rayleigh / 5830) - 1);
        };
    }

    /**
     * Forced convection across a vertical cylinder: Churchill and Bernstein 1977, Journal of Heat Transfer 99, 300; length is the
     * diameter, Reynolds · Prandtl above 0.2. About 20 %; for gusty wind more.
     */
    public static double windAcrossCylinder(double reynolds, double prandtl) {
        double first =
                0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl) / Math.pow(1 + Math.pow(0.4 / prandtl, 2.0 / 3), 0.25);
        return 0.3 + first * Math.pow(1 + Math.pow(reynolds / 282_000, 5.0 / 8), 0.8);
    }

    /**
     * Forced convection along a flat plate: 0.664 Re^½ Pr^⅓ below a Reynolds number of 5e5 (Pohlhausen), beyond that the
     * mixed boundary layer (0.037 Re^0.8 − 871) Pr^⅓. Turbulence of wind near the ground may add up to 50 %.
     */
    public static double windAlongPlate(double reynolds, double prandtl) {
        double smooth = 0.664 * Math.sqrt(reynolds);
        double mixed = 0.037 * Math.pow(reynolds, 0.8) - 871;
        return (reynolds < 5e5 ? smooth : Math.max(smooth, mixed)) * Math.cbrt(prandtl);
    }

    /**
     * Natural and forced convection combined: (a³ + b³)^⅓, Churchill 1977, AIChE Journal 23, 10. Between the larger of the
     * two and a quarter above it.
     */
    public static double combined(double natural, double forced) {
        return Math.cbrt(natural * natural * natural + forced * forced * forced);
    }
}
