package simmerpoint.pan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityTable;

/** Finishes of pans with their absorptance. Every row has its source and is "typical" or "measured". */
public final class FinishCatalogue {
    private static final List<CatalogueFinish> ALL = read();

    private FinishCatalogue() {}

    /** Every finish in the order of the table, darkest first. */
    public static List<CatalogueFinish> all() {
        return ALL;
    }

    /** The finish of that name, capital letters or not. */
    public static Optional<Finish> find(String name) {
        return ALL.stream()
                .map(CatalogueFinish::finish)
                .filter(finish -> finish.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    private static List<CatalogueFinish> read() {
        QuantityTable table = QuantityTable.read(FinishCatalogue.class, "pan-finishes.tsv");
        return table.rows().stream().map(row -> finish(table, row)).toList();
    }

    private static CatalogueFinish finish(QuantityTable table, Map<String, String> row) {
        double absorptance = table.quantity(row, "absorptance", Dimension.SHARE);
        return new CatalogueFinish(
                new Finish(table.text(row, "finish"), absorptance),
                table.quantity(row, "doubt", Dimension.SHARE),
                table.optional(row, "reflectance", Dimension.SHARE),
                table.text(row, "quality").equals("measured"),
                table.text(row, "source"));
    }
}
