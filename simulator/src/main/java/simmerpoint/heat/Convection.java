package simmerpoint.heat;

/**
 * Mean Nusselt numbers of the faces of a pan. Each correlation is known to some 20 to 30 % on a clean shape in a
 * laboratory; outdoors, on a pan with handles above a warm mirror, {@link LossSpread} says how far to trust their sum.
 * Sources as in Incropera et al., Fundamentals of Heat and Mass Transfer, chapters 7 and 9 (from memory). A face colder
 * than the air is given the number of one as much warmer: right for the wall, rough for level faces.
 */
public final class Convection {
    private Convection() {}

    /**
     * Still air at an upright wall, any flow: Churchill and Chu 1975, International Journal of Heat and Mass Transfer 18,
     * 1323. Rayleigh number up to 1e12 with the wall's height as length. A round wall counts as flat where diameter ÷
     * height is at least 35/Gr^0.25, so for any pan.
     */
    public static double wall(double rayleigh, double prandtl) {
        double root = 0.825 + 0.387 * Math.pow(rayleigh, 1.0 / 6) / Math.pow(prandtlTerm(prandtl), 8.0 / 27);
        return root * root;
    }

    /** The same authors' law for layered flow, Rayleigh number up to 1e9: a little more exact there. */
    public static double wallLayered(double rayleigh, double prandtl) {
        return 0.68 + 0.670 * Math.pow(rayleigh, 0.25) / Math.pow(prandtlTerm(prandtl), 4.0 / 9);
    }

    private static double prandtlTerm(double prandtl) {
        return 1 + Math.pow(0.492 / prandtl, 9.0 / 16);
    }

    /**
     * Still air above a level warm face: McAdams 1954, Heat Transmission, with the length area ÷ edge (a quarter of the
     * diameter): 0.54 Ra^¼ from 1e4 to 1e7, 0.15 Ra^⅓ up to 1e11; the larger of the two, which meet near 5e6.
     */
    public static double lid(double rayleigh) {
        return Math.max(0.54 * Math.pow(rayleigh, 0.25), 0.15 * Math.cbrt(rayleigh));
    }

    /**
     * Still air under a level warm face: 0.27 Ra^¼, McAdams 1954, same length, Rayleigh number 1e5 to 1e10. Later
     * measurements differ by up to 30 %.
     */
    public static double underside(double rayleigh) {
        return 0.27 * Math.pow(rayleigh, 0.25);
    }

    /**
     * Wind across an upright cylinder: Churchill and Bernstein 1977, Journal of Heat Transfer 99, 300; length is the
     * diameter, Reynolds · Prandtl above 0.2. About 20 %; for gusty wind more.
     */
    public static double windAcross(double reynolds, double prandtl) {
        double first =
                0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl) / Math.pow(1 + Math.pow(0.4 / prandtl, 2.0 / 3), 0.25);
        return 0.3 + first * Math.pow(1 + Math.pow(reynolds / 282_000, 5.0 / 8), 0.8);
    }

    /**
     * Wind along a level face: 0.664 Re^½ Pr^⅓ below a Reynolds number of 5e5 (Pohlhausen), beyond that the mixed layer
     * (0.037 Re^0.8 − 871) Pr^⅓. Garden wind is rough, which may add up to 50 %.
     */
    public static double windAlong(double reynolds, double prandtl) {
        double smooth = 0.664 * Math.sqrt(reynolds);
        double mixed = 0.037 * Math.pow(reynolds, 0.8) - 871;
        return (reynolds < 5e5 ? smooth : Math.max(smooth, mixed)) * Math.cbrt(prandtl);
    }

    /**
     * Still-air and wind coefficients together: (a³ + b³)^⅓, Churchill 1977, AIChE Journal 23, 10. Never below the larger
     * of the two and at most a quarter above it.
     */
    public static double together(double still, double wind) {
        return Math.cbrt(still * still * still + wind * wind * wind);
    }
}
