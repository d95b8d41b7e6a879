package simmerpoint.heat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The rows of a resource table of this package: tab-separated, headings in the first line, comments after #. */
final class ResourceTable {
    private ResourceTable() {}

    /** All rows below the headings, each with as many cells as there are headings. */
    static List<String[]> rows(String resource) {
        List<String[]> lines = lines(resource).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> line.split("\t", -1))
                .toList();
        int columns = lines.get(0).length;
        for (String[] line : lines) {
            if (line.length != columns) {
                throw new IllegalStateException(resource + ": " + line[0] + " has not " + columns + " cells");
            }
        }
        return lines.subList(1, lines.size());
    }

    private static List<String> lines(String resource) {
        try (InputStream in = ResourceTable.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("missing table " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
