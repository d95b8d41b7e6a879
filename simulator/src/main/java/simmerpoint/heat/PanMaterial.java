package simmerpoint.heat;

import java.util.List;
import java.util.Optional;
import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityTable;

/**
 * Material of a pan. The table vessel-materials.tsv holds stainless steel, steel, aluminium, cast iron, copper and glass,
 * each with its source.
 *
 * @param name as in the table
 * @param specificHeat J/(kg K), above 0
 * @param density kg/m³, above 0
 * @param conductivity W/(m K), above 0
 * @param source of the values, and their quality
 */
public record PanMaterial(String name, double specificHeat, double density, double conductivity, String source) {
    private static final List<PanMaterial> ALL = read();

    /** Checks the figures. */
    public PanMaterial {
        ArgumentChecks.positive("specific heat", specificHeat, "J/(kg K)");
        ArgumentChecks.positive("density", density, "kg/m³");
        ArgumentChecks.positive("conductivity", conductivity, "W/(m K)");
    }

    /** Every material of the table, in its order. */
    public static List<PanMaterial> all() {
        return ALL;
    }

    /** The material of that name, capital letters or not. */
    public static Optional<PanMaterial> find(String name) {
        return ALL.stream().filter(m -> m.name.equalsIgnoreCase(name.strip())).findFirst();
    }

    private static List<PanMaterial> read() {
        QuantityTable table = QuantityTable.read(PanMaterial.class, "vessel-materials.tsv");
        return table.rows().stream()
                .map(row -> new PanMaterial(
                        table.text(row, "material"),
                        table.quantity(row, "specific-heat", Dimension.NUMBER),
                        table.quantity(row, "density", Dimension.NUMBER),
                        table.quantity(row, "conductivity", Dimension.NUMBER),
                        table.text(row, "source")))
                .toList();
    }
}
