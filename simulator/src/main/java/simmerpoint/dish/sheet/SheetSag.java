package simmerpoint.dish.sheet;

/**
 * How flat sheet sags under its own weight, lying level and free to turn where it is held (any text on strength of materials).
 *
 * <ul>
 *   <li>Between two ribs L apart, a beam 1 m wide of weight q = ρgt a metre and stiffness EI = Et³/12: 5qL⁴/384EI midway, qL³/24EI of
 *       slope at the ribs, √(17/35) of that in the root mean square, the mean square of 1 − 6u² + 4u³ from 0 to 1.
 *   <li>A disc of radius a held at its edge, D = Et³/12(1 − ν²): (5 + ν)qa⁴/64(1 + ν)D in the middle, qa³/8(1 + ν)D of slope at the edge.
 *       The slope goes as ρ(k − ρ²), k = (3 + ν)/(1 + ν), which gives the root mean square over the area (derived here).
 * </ul>
 *
 * @param span from rib to rib, or across the disc, m
 * @param depth midway, m
 * @param slope where it is held, rad
 * @param meanSlope root mean square over the sheet, rad
 */
public record SheetSag(double span, double depth, double slope, double meanSlope) {
    /** Standard acceleration of free fall, m/s² (by definition). */
    private static final double GRAVITY = 9.80665;

    private static final double MEAN_OF_BEAM = Math.sqrt(17.0 / 35);

    /** Of sheet that lies on two ribs, {@code span} m apart; its stiffness is known. */
    public static SheetSag betweenRibs(SheetMaterial material, double thickness, double span) {
        double stiffness = material.modulus() * Math.pow(thickness, 3) / 12;
        double lean = weight(material, thickness) * Math.pow(span, 3) / (24 * stiffness);
        return new SheetSag(span, 5.0 / 16 * span * lean, lean, MEAN_OF_BEAM * lean);
    }

    /** Of a round piece that is held at its edge alone; its stiffness is known. */
    public static SheetSag ofDisc(SheetMaterial material, double thickness, double diameter) {
        double radius = diameter / 2;
        double nu = SheetMaterial.POISSON;
        double lean =
                weight(material, thickness) * Math.pow(radius, 3) / (8 * (1 + nu) * material.plateStiffness(thickness));
        double k = (3 + nu) / (1 + nu);
        double mean = Math.sqrt(2 * (k * k / 4 - k / 3 + 1.0 / 8)) / (k - 1);
        return new SheetSag(diameter, (5 + nu) / 8 * radius * lean, lean, mean * lean);
    }

    private static double weight(SheetMaterial material, double thickness) {
        return material.density() * thickness * GRAVITY;
    }
}
