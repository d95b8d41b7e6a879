package simmerpoint.sun;

import java.util.List;
import java.util.Map;
import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityTable;

/** A resource table with a name, perhaps other numbers, twelve numbers from January to December and a source in every row. */
final class MonthlyTable {
    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");

    private final QuantityTable table;

    private MonthlyTable(QuantityTable table) {
        this.table = table;
    }

    /** Reads the resource {@code name} of this package; a fault in it is a programmer's mistake. */
    static MonthlyTable read(String name) {
        return new MonthlyTable(QuantityTable.read(MonthlyTable.class, name));
    }

    /** The twelve numbers of the row {@code key}. */
    double[] values(String key) {
        Map<String, String> row = row(key);
        return MONTHS.stream()
                .mapToDouble(month -> table.quantity(row, month, Dimension.NUMBER))
                .toArray();
    }

    /** The first cells of all rows. */
    List<String> keys() {
        return table.rows().stream().map(row -> row.values().iterator().next()).toList();
    }

    /** The number of the row {@code key} in another column. */
    double number(String key, String column) {
        return table.quantity(row(key), column, Dimension.NUMBER);
    }

    /** Source of the row {@code key}. */
    String source(String key) {
        return table.text(row(key), "source");
    }

    private Map<String, String> row(String key) {
        return table.rows().stream()
                .filter(row -> row.values().iterator().next().equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(table.name() + " has no row " + key));
    }
}
