package simmerpoint.dish.sheet;

import java.util.List;
import simmerpoint.units.QuantityTable;

/**
 * Board, ply or metal in sheets.
 *
 * @param name for the builder
 * @param density kg/m³
 * @param source where the density is from, or "typical"
 * @param modulus of elasticity in bending, Pa; 0 if it is not known
 * @param modulusSource where that is from, or "typical"
 * @param yieldStrength stress beyond which a bend stays, Pa; 0 for what breaks or creeps instead
 * @param yieldSource where that is from
 */
public record SheetMaterial(
        String name,
        double density,
        String source,
        double modulus,
        String modulusSource,
        double yieldStrength,
        String yieldSource) {
    private static final double GIGA = 1e9;
    private static final double MEGA = 1e6;

    private static final List<SheetMaterial> ALL =
            QuantityTable.read(SheetMaterial.class, "sheet-materials.tsv").rows().stream()
                    .map(row -> new SheetMaterial(
                            row.get("name"),
                            Double.parseDouble(row.get("density")),
                            row.get("source"),
                            GIGA * Double.parseDouble(row.get("modulus")),
                            row.get("modulus source"),
                            MEGA * Double.parseDouble(row.get("yield")),
                            row.get("yield source")))
                    .toList();

    /** How much sheet narrows as it is stretched; 0.2 to 0.4 for most (typical). */
    static final double POISSON = 0.3;

    /** Stiffness of a wide sheet against bending, Et³/12(1 − ν²) (any text on plates), N·m. */
    double plateStiffness(double thickness) {
        return modulus * Math.pow(thickness, 3) / (12 * (1 - POISSON * POISSON));
    }

    /** All of the catalogue. */
    public static List<SheetMaterial> all() {
        return ALL;
    }

    /** The one of that name. */
    public static SheetMaterial named(String name) {
        return ALL.stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
    }
}
