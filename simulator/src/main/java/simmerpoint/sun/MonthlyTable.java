package simmerpoint.sun;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A resource table: tab-separated, with a name, twelve numbers from January to December and a source in every row; lines
 * that start with # are comments, the first other line is the heading.
 */
final class MonthlyTable {
    private static final int COLUMNS = 14;

    private final String name;
    private final Map<String, Row> rows = new LinkedHashMap<>();

    private record Row(double[] values, String source) {}

    private MonthlyTable(String name) {
        this.name = name;
    }

    /** Reads the resource {@code name} of this package; a fault in it is a programmer's mistake. */
    static MonthlyTable read(String name) {
        MonthlyTable table = new MonthlyTable(name);
        try (InputStream stream = MonthlyTable.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            reader.lines().filter(line -> !line.startsWith("#")).skip(1).forEach(table::add);
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
        return table;
    }

    /** The twelve numbers of the row {@code key}. */
    double[] values(String key) {
        return row(key).values.clone();
    }

    /** Source of the row {@code key}. */
    String source(String key) {
        return row(key).source;
    }

    private Row row(String key) {
        Row row = rows.get(key);
        if (row == null) {
            throw new IllegalArgumentException(name + " has no row " + key);
        }
        return row;
    }

    private void add(String line) {
        String[] cells = line.split("\t", -1);
        if (cells.length != COLUMNS || cells[COLUMNS - 1].isBlank()) {
            throw new IllegalStateException(name + ": not a name, twelve numbers and a source: " + line);
        }
        double[] values = Arrays.stream(cells, 1, COLUMNS - 1)
                .mapToDouble(Double::parseDouble)
                .toArray();
        if (rows.put(cells[0], new Row(values, cells[COLUMNS - 1])) != null) {
            throw new IllegalStateException(name + ": two rows " + cells[0]);
        }
    }
}
