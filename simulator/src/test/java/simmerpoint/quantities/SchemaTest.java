package simmerpoint.quantities;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.report.SampleResults;

/** Holds JSON against its schema with a library that knows nothing of ours. */
class SchemaTest {
    private static <R> List<?> faults(Document<R> document, String json) {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(document.schema(), InputFormat.JSON);
        return schema.validate(
                json, InputFormat.JSON, context -> context.executionConfig(c -> c.formatAssertionsEnabled(true)));
    }

    private static <R> void holds(Document<R> document, R result) {
        assertEquals(List.of(), faults(document, new String(document.json(result), StandardCharsets.UTF_8)));
    }

    @Test
    void traceKeepsToItsSchema() {
        holds(TraceQuantities.DOCUMENT, SampleResults.lopsided());
        holds(TraceQuantities.DOCUMENT, SampleResults.dark());
        holds(TraceQuantities.DOCUMENT, SampleResults.disc());
    }

    @Test
    void whatIsMissingOrNotDeclaredIsFound() {
        Document<simmerpoint.study.trace.TraceResult> trace = TraceQuantities.DOCUMENT;
        String json = new String(trace.json(SampleResults.tight()), StandardCharsets.UTF_8);
        assertFalse(faults(trace, json.replace("\"panels\"", "\"panel_count\"")).isEmpty());
        assertFalse(faults(trace, json.replaceFirst("\"seed\" : [0-9]+,", "")).isEmpty());
        assertFalse(faults(trace, json.replaceFirst("\"target\" : \"pan\"", "\"target\" : \"pot\""))
                .isEmpty());
    }
}
