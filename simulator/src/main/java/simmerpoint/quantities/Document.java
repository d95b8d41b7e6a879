package simmerpoint.quantities;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;

/**
 * What a command writes of its results: all of them as JSON, and one table as CSV.
 *
 * @param <R> type of the result
 * @param command what was run
 * @param title of what was studied
 * @param seed of the traces; null where nothing is traced
 * @param fields of the JSON object behind its head; the group {@code run}, which comes last, holds all that differs
 *     between two runs of the same
 * @param table that goes into CSV
 */
public record Document<R>(
        String command, Function<R, String> title, ToLongFunction<R> seed, Fields<R> fields, Table<R, ?> table) {
    /** Goes up by one when a field changes its key, its unit or its meaning. */
    private static final int SCHEMA_VERSION = 2;

    /** The fields of the JSON object, the same head before those of every study. */
    Fields<R> whole() {
        Fields<R> head = Fields.<R>none()
                .whole(
                        "schema_version",
                        "version of this schema, goes up when a field changes its key or its meaning",
                        r -> SCHEMA_VERSION)
                .text("command", "what was run", List.of(command), r -> command)
                .text("title", "title of the scenario", title)
                .text("version", "version of the program", r -> Version.text());
        return (seed == null ? head : head.whole("seed", "seed of the random scrambles and of the build errors", seed))
                .include(r -> r, fields);
    }

    /** The JSON of a result, in UTF-8, ending with a line break. */
    public byte[] json(R result) {
        return JsonWriter.bytes(whole(), result);
    }

    /** The table of a result as CSV, in UTF-8. */
    public byte[] csv(R result) {
        return CsvWriter.text(this, table, result).getBytes(StandardCharsets.UTF_8);
    }

    /** The JSON Schema of {@link #json}. */
    public String schema() {
        return SchemaWriter.text(this);
    }
}
