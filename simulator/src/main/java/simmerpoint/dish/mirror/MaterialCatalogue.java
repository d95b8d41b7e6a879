package simmerpoint.dish.mirror;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityTable;

/** Mirror materials with their usual figures. Every row names its source and says "typical" or "measured". */
public final class MaterialCatalogue {
    private static final List<Material> ALL = read();

    private MaterialCatalogue() {}

    /** Every material in the order of the table, best reflectance first. */
    public static List<Material> all() {
        return ALL;
    }

    /** The material of that name, capital letters or not. */
    public static Optional<Material> find(String name) {
        return ALL.stream()
                .filter(material -> material.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    private static List<Material> read() {
        QuantityTable table = QuantityTable.read(MaterialCatalogue.class, "mirror-materials.tsv");
        return table.rows().stream().map(row -> material(table, row)).toList();
    }

    private static Material material(QuantityTable table, Map<String, String> row) {
        return new Material(
                table.text(row, "material"),
                table.quantity(row, "reflectance", Dimension.SHARE),
                table.quantity(row, "reflectance-doubt", Dimension.SHARE),
                table.optional(row, "absorptance", Dimension.SHARE),
                table.quantity(row, "scattered", Dimension.SHARE),
                table.quantity(row, "slope-error", Dimension.ANGLE),
                table.quantity(row, "beam-spread", Dimension.ANGLE),
                table.quantity(row, "wide-share", Dimension.SHARE),
                table.quantity(row, "wide-spread", Dimension.ANGLE),
                table.text(row, "rigid").equals("yes"),
                table.text(row, "quality").equals("measured"),
                table.text(row, "source"));
    }
}
