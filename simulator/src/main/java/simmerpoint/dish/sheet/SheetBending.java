package simmerpoint.dish.sheet;

/**
 * Flat sheet bent to a curve. Its outer fibres are strained by t/2R, so that it stays elastic down to R = Et/2Y, Y the yield strength;
 * from a sharper bend it springs back to R' with R/R' = 4X³ − 3X + 1, X = RY/Et (Gardiner 1957, from memory; it is the exact law of a sheet
 * that does not harden). The moment that holds it is that of a plate, Et³/12(1 − ν²)R for every metre of width (any text on plates).
 *
 * @param material of the sheet
 * @param thickness t, m
 */
public record SheetBending(SheetMaterial material, double thickness) {
    /** Whether it is metal whose yield strength is known. */
    public boolean yields() {
        return material.yieldStrength() > 0;
    }

    /** Bends of a larger radius spring back fully, m; 0 for a sheet that breaks before it yields. */
    public double elasticRadius() {
        return yields() ? material.modulus() * thickness / (2 * material.yieldStrength()) : 0;
    }

    /** Whether a bend of that radius, m, leaves no curve. */
    public boolean springsBackFully(double radius) {
        return radius >= elasticRadius();
    }

    /** Radius that is left of a bend once it is let go, m; infinite if none is. */
    public double radiusLeft(double radius) {
        if (springsBackFully(radius)) {
            return Double.POSITIVE_INFINITY;
        }
        double x = radius * material.yieldStrength() / (material.modulus() * thickness);
        return radius / (4 * x * x * x - 3 * x + 1);
    }

    /** Moment for every metre of width that holds it at a radius, m, as long as it is elastic; N·m. */
    public double moment(double radius) {
        return material.plateStiffness(thickness) / radius;
    }
}
