package simmerpoint.quantities;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import simmerpoint.report.SampleResults;

class SchemaTest {
    private static final Path FROZEN = Path.of("src/test/resources/simmerpoint/frozen/results");

    @Test
    void traceKeepsToItsSchema() {
        Schemas.read(TraceQuantities.DOCUMENT, SampleResults.lopsided());
        Schemas.read(TraceQuantities.DOCUMENT, SampleResults.dark());
        Schemas.read(TraceQuantities.DOCUMENT, SampleResults.disc());
    }

    /** Their group "run" is emptied, so nothing is asked of it. */
    @Test
    void everyFrozenResultKeepsToItsSchema() throws IOException {
        Set<String> commands = new HashSet<>();
        try (Stream<Path> files = Files.list(FROZEN)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".json")).toList()) {
                JsonNode json = new ObjectMapper().readTree(file.toFile());
                String command = json.path("command").asText();
                commands.add(command);
                assertEquals(List.of(), Schemas.faults(schemaButForRun(command), json), file.toString());
            }
        }
        assertEquals(Documents.ALL.stream().map(Document::command).collect(Collectors.toSet()), commands);
    }

    private static String schemaButForRun(String command) throws IOException {
        ObjectNode schema = (ObjectNode) new ObjectMapper().readTree(Schemas.schema(command));
        ((ObjectNode) schema.get("properties")).putObject("run").put("type", "object");
        return schema.toString();
    }

    @Test
    void whatIsMissingOrNotDeclaredIsFound() {
        ObjectNode json = (ObjectNode) Schemas.read(TraceQuantities.DOCUMENT, SampleResults.tight());
        String schema = TraceQuantities.DOCUMENT.schema();
        assertFalse(Schemas.faults(schema, json.deepCopy().put("panel", 1)).isEmpty());
        assertFalse(Schemas.faults(schema, json.deepCopy().without("seed")).isEmpty());
        assertFalse(Schemas.faults(schema, json.deepCopy().put("target", "pot")).isEmpty());
        assertFalse(Schemas.faults(schema, json.deepCopy().put("panels", 1.5)).isEmpty());
    }

    /** A spreadsheet that is joined with a JSON finds the same things under the same names. */
    @Test
    void columnsOfTablesHaveKeysOfTheJson() {
        for (Document<?> document : List.of(
                PanQuantities.DOCUMENT, DayQuantities.DOCUMENT, DayQuantities.YEAR, CompareQuantities.DOCUMENT)) {
            Set<String> keys = keys(document.fields());
            for (Field.Quantity<?> column : document.table().fields().columns()) {
                assertTrue(keys.contains(column.key()), document.command() + ": " + column.key());
            }
        }
    }

    /** An angle in degrees or a time in minutes would be read wrongly by whoever trusts the rest. */
    @Test
    void noKeyEndsWithAnotherUnitThanThoseOfTheSi() {
        for (Document<?> document : Documents.ALL) {
            Set<String> keys = keys(document.fields());
            keys.addAll(keys(document.table().fields()));
            for (String key : keys) {
                assertFalse(key.matches(".*_(deg|mrad|mm|cm|kW|kW_m2|min|minutes|h|kg_h|K_min)(_se)?"), key);
            }
        }
    }

    private static Set<String> keys(Fields<?> fields) {
        Set<String> keys = new HashSet<>();
        for (Field<?> field : fields.all()) {
            keys.add(field.key());
            if (field instanceof Field.Group<?, ?> group) {
                keys.addAll(keys(group.fields()));
            } else if (field instanceof Field.Rows<?, ?> rows) {
                keys.addAll(keys(rows.fields()));
            }
        }
        return keys;
    }
}
