package simmerpoint.units;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A resource table: tab-separated text, the column names in the first line, cells with units ("5 mrad"), lines that begin
 * with # are comments. A fault in it is a programmer's mistake.
 *
 * @param name of the resource, for messages
 * @param rows cells by column name
 */
public record QuantityTable(String name, List<Map<String, String>> rows) {
    /** Reads the resource {@code name} in the package of {@code owner}. */
    public static QuantityTable read(Class<?> owner, String name) {
        try (InputStream stream = owner.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            return new QuantityTable(name, rows(name, stream));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Map<String, String>> rows(String name, InputStream stream) throws IOException {
        List<Map<String, String>> rows = new ArrayList<>();
        BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
        String[] columns = null;
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
            if (line.isBlank() || line.startsWith("#")) {
                continue;
            }
            String[] cells = line.split("\t", -1);
            if (columns == null) {
                columns = cells;
            } else {
                rows.add(row(name, columns, cells));
            }
        }
        return List.copyOf(rows);
    }

    private static Map<String, String> row(String name, String[] columns, String[] cells) {
        if (cells.length != columns.length) {
            throw new IllegalStateException(name + ", row " + cells[0] + ": " + cells.length + " cells");
        }
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < columns.length; i++) {
            row.put(columns[i].strip(), cells[i].strip());
        }
        return row;
    }

    /** The cell of that row and column as an SI value. */
    public double quantity(Map<String, String> row, String column, Dimension dimension) {
        return optional(row, column, dimension)
                .orElseThrow(() -> new IllegalStateException(name + ", " + row.values() + ": no " + column));
    }

    /** The cell of that row and column as an SI value; empty if the cell is empty. */
    public OptionalDouble optional(Map<String, String> row, String column, Dimension dimension) {
        String cell = text(row, column);
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(QuantityParser.parse(cell, dimension));
        } catch (QuantityException e) {
            throw new IllegalStateException(name + ", " + column + ": " + e.getMessage(), e);
        }
    }

    /** The cell of that row and column as text. */
    public String text(Map<String, String> row, String column) {
        String cell = row.get(column);
        if (cell == null) {
            throw new IllegalStateException(name + " has no column " + column);
        }
        return cell;
    }
}
