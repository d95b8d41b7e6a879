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
 */
public record SheetMaterial(String name, double density, String source, double modulus, String modulusSource) {
    private static final double GIGA = 1e9;

    private static final List<SheetMaterial> ALL =
            QuantityTable.read(SheetMaterial.class, "sheet-materials.tsv").rows().stream()
                    .map(row -> new SheetMaterial(
                            row.get("name"),
                            Double.parseDouble(row.get("density")),
                            row.get("source"),
                            GIGA * Double.parseDouble(row.get("modulus")),
                            row.get("modulus source")))
                    .toList();

    /** All of the catalogue. */
    public static List<SheetMaterial> all() {
        return ALL;
    }

    /** The one of that name. */
    public static SheetMaterial named(String name) {
        return ALL.stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow();
    }
}
