package simmerpoint.workshop;

import simmerpoint.heat.PhysicalConstants;
import simmerpoint.workshop.CuttingStock.Sheeting;

/**
 * How a flat sheet sags between two ribs under its own weight, lying level and free to turn on the ribs: a beam 1 m wide of weight q
 * = ρgt a metre and stiffness EI = Et³/12 sags 5qL⁴/384EI midway and leans qL³/24EI at the ribs (any text on strength of materials).
 *
 * @param span from rib to rib, m
 * @param depth midway, m
 * @param slope at the ribs, rad
 */
public record SheetSag(double span, double depth, double slope) {
    /** Root mean square of the slope ÷ that at the ribs: √(17/35), the mean square of 1 − 6u² + 4u³ from 0 to 1. */
    public static final double MEAN_SLOPE = Math.sqrt(17.0 / 35);

    /** Of a sheet whose stiffness is known. */
    static SheetSag of(Sheeting sheet, double span) {
        double thickness = sheet.thickness();
        double stiffness = sheet.material().modulus() * Math.pow(thickness, 3) / 12;
        double weight = sheet.arealMass() * PhysicalConstants.GRAVITY;
        double cube = Math.pow(span, 3);
        return new SheetSag(span, 5 * weight * cube * span / (384 * stiffness), weight * cube / (24 * stiffness));
    }

    /** Slope in the mean square over the sheet, rad. */
    public double meanSlope() {
        return MEAN_SLOPE * slope;
    }
}
