package simmerpoint.heat;

/**
 * The sheet that a pan's underside is made of.
 *
 * @param material of the sheet
 * @param thicknessMetres above 0
 */
public record UndersidePlate(PanMaterial material, double thicknessMetres) {
    /** Checks the thickness. */
    public UndersidePlate {
        ArgumentChecks.positive("thickness of the underside", thicknessMetres, "m");
    }

    /** Mass of a round one, kg. */
    public double kilograms(double areaSquareMetres) {
        return material.density() * thicknessMetres * areaSquareMetres;
    }

    /** Conductivity · thickness, W/K: how well it spreads heat along itself. */
    public double conductance() {
        return material.conductivity() * thicknessMetres;
    }

    /** Heat capacity, J/(m² K). */
    public double heatCapacity() {
        return material.density() * material.specificHeat() * thicknessMetres;
    }
}
