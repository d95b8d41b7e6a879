package simmerpoint.scenario.doubts;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import simmerpoint.units.QuantityTable;

/** The table of usual doubts, doubts.tsv, whose head says what its columns mean. */
final class DoubtTable {
    private static final Map<String, Row> ROWS = read();

    private DoubtTable() {}

    /**
     * One row.
     *
     * @param cause the key, or the name of what has none
     * @param name what the reader is told
     * @param doubt size and law, as written
     * @param atNothing the same for a figure of 0; empty if that leaves no doubt
     * @param measurement what would tell it better
     * @param source who says so
     */
    record Row(String cause, String name, String doubt, String atNothing, String measurement, String source) {
        /** Size and law for a figure of that value. */
        String words(double value) {
            return value == 0 && !atNothing.isEmpty() ? atNothing : doubt;
        }
    }

    /** All rows in their order, by cause. */
    static Map<String, Row> rows() {
        return ROWS;
    }

    static Row get(String cause) {
        return Optional.ofNullable(ROWS.get(cause)).orElseThrow(() -> new IllegalArgumentException(cause));
    }

    private static Map<String, Row> read() {
        QuantityTable table = QuantityTable.read(DoubtTable.class, "doubts.tsv");
        Map<String, Row> rows = new LinkedHashMap<>();
        for (Map<String, String> row : table.rows()) {
            String cause = table.text(row, "cause");
            rows.put(
                    cause,
                    new Row(
                            cause,
                            table.text(row, "name"),
                            table.text(row, "doubt"),
                            table.text(row, "at nothing"),
                            table.text(row, "measurement"),
                            table.text(row, "source")));
        }
        return rows;
    }
}
