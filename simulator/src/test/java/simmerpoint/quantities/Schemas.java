package simmerpoint.quantities;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;

/** Holds JSON against its schema with a library that knows nothing of ours. */
public final class Schemas {
    private Schemas() {}

    /** The JSON of a result, read back; it keeps to its schema. */
    public static <R> JsonNode read(Document<R> document, R result) {
        try {
            JsonNode json = new ObjectMapper().readTree(document.json(result));
            assertEquals(List.of(), faults(document.schema(), json), document.command());
            return json;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file that a command has written; it keeps to the schema of that command. */
    public static JsonNode read(Path file) throws IOException {
        JsonNode json = new ObjectMapper().readTree(file.toFile());
        assertEquals(List.of(), faults(schema(json.path("command").asText()), json), file.toString());
        return json;
    }

    static String schema(String command) {
        return Documents.ALL.stream()
                .filter(each -> each.command().equals(command))
                .findFirst()
                .orElseThrow()
                .schema();
    }

    static List<Error> faults(String schema, JsonNode json) {
        Schema read = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema, InputFormat.JSON);
        return read.validate(json, context -> context.executionConfig(config -> config.formatAssertionsEnabled(true)));
    }
}
