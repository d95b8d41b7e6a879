package simmerpoint.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import simmerpoint.heat.Range;
import simmerpoint.sampling.Estimate;

/** Figures as JSON fields: what is not finite becomes null. */
final class JsonFigures {
    private final JsonGenerator json;

    private JsonFigures(JsonGenerator json) {
        this.json = json;
    }

    /** Writes the fields of one object. */
    interface Fields {
        void write(JsonGenerator json, JsonFigures figures) throws IOException;
    }

    /** The bytes of a file with one object, ending with a line break. */
    static byte[] bytes(Fields fields) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(4096);
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            DefaultIndenter lines = new DefaultIndenter("  ", "\n");
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
            json.writeStartObject();
            fields.write(json, new JsonFigures(json));
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    void number(String name, double x) throws IOException {
        json.writeFieldName(name);
        if (Double.isFinite(x)) {
            json.writeNumber(StableNumber.of(x));
        } else {
            json.writeNull();
        }
    }

    /** {@code name} and {@code name_se}. */
    void estimate(String name, Estimate e) throws IOException {
        number(name, e.value());
        number(name + "_se", Double.isFinite(e.value()) ? e.standardError() : Double.NaN);
    }

    /** {@code name: {low, likely, high}}. */
    void range(String name, Range range) throws IOException {
        json.writeObjectFieldStart(name);
        number("low", range.low());
        number("likely", range.likely());
        number("high", range.high());
        json.writeEndObject();
    }
}
