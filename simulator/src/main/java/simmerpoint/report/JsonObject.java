package simmerpoint.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import simmerpoint.quantities.StableNumber;
import simmerpoint.sampling.Estimate;

/** Writes the fields of JSON objects in our way: figures stable on every Java, null for what does not exist. */
final class JsonObject {
    private final JsonGenerator json;

    private JsonObject(JsonGenerator json) {
        this.json = json;
    }

    /** Fills an object. */
    interface Filler {
        void fill(JsonObject object) throws IOException;
    }

    /** The bytes of a file that holds one object, ending with a line break. */
    static byte[] bytes(Filler filler) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 14);
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            DefaultIndenter lines = new DefaultIndenter("  ", "\n");
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
            json.writeStartObject();
            filler.fill(new JsonObject(json));
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    void text(String name, String text) throws IOException {
        json.writeStringField(name, text);
    }

    void whole(String name, long n) throws IOException {
        json.writeNumberField(name, n);
    }

    void flag(String name, boolean is) throws IOException {
        json.writeBooleanField(name, is);
    }

    void nothing(String name) throws IOException {
        json.writeNullField(name);
    }

    /** A figure; null if it is not finite. */
    void number(String name, double x) throws IOException {
        json.writeFieldName(name);
        if (Double.isFinite(x)) {
            json.writeNumber(StableNumber.of(x));
        } else {
            json.writeNull();
        }
    }

    /** A traced figure and, as {@code name_se}, its standard error. */
    void estimate(String name, Estimate e) throws IOException {
        number(name, e.value());
        number(name + "_se", Double.isFinite(e.value()) ? e.standardError() : Double.NaN);
    }

    void object(String name, Filler filler) throws IOException {
        json.writeObjectFieldStart(name);
        filler.fill(this);
        json.writeEndObject();
    }

    /** Fills one element of a list. */
    interface Each<T> {
        void fill(JsonObject object, T element) throws IOException;
    }

    <T> void list(String name, Iterable<T> elements, Each<T> each) throws IOException {
        json.writeArrayFieldStart(name);
        for (T element : elements) {
            json.writeStartObject();
            each.fill(this, element);
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
