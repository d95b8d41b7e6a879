package simmerpoint.quantities;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import simmerpoint.quantities.Field.Group;
import simmerpoint.quantities.Field.Quantity;
import simmerpoint.quantities.Field.Rows;
import simmerpoint.sampling.Estimate;

/** Writes the fields of a result as a JSON object: figures the same on every Java, null for what there is not. */
final class JsonWriter {
    private final JsonGenerator json;

    private JsonWriter(JsonGenerator json) {
        this.json = json;
    }

    static <R> byte[] bytes(Fields<R> fields, R result) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 14);
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.setPrettyPrinter(printer());
            new JsonWriter(json).object(fields, result);
            json.writeRaw('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** A field a line, and the same line ends everywhere. */
    static DefaultPrettyPrinter printer() {
        return new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
    }

    private <R> void object(Fields<R> fields, R result) throws IOException {
        json.writeStartObject();
        for (Field<R> field : fields.all()) {
            json.writeFieldName(field.key());
            if (field instanceof Quantity<R> quantity) {
                quantity(quantity, quantity.value().apply(result));
            } else if (field instanceof Group<R, ?> group) {
                group(group, result);
            } else if (field instanceof Rows<R, ?> rows) {
                rows(rows, result);
            }
        }
        json.writeEndObject();
    }

    private <R, S> void group(Group<R, S> group, R result) throws IOException {
        S part = group.value().apply(result);
        if (part == null) {
            json.writeNull();
        } else {
            object(group.fields(), part);
        }
    }

    private <R, S> void rows(Rows<R, S> rows, R result) throws IOException {
        List<S> parts = rows.value().apply(result);
        if (parts == null) {
            json.writeNull();
            return;
        }
        json.writeStartArray();
        for (S part : parts) {
            object(rows.fields(), part);
        }
        json.writeEndArray();
    }

    private void quantity(Quantity<?> quantity, Object value) throws IOException {
        switch (quantity.type()) {
            case NUMBER -> number((Double) value);
            case ESTIMATE -> estimate(quantity.key(), (Estimate) value);
            case VECTOR -> vector((double[]) value);
            case TEXTS -> texts((Map<?, ?>) value);
            default -> json.writeObject(value);
        }
    }

    private void number(Double x) throws IOException {
        if (x != null && Double.isFinite(x)) {
            json.writeNumber(StableNumber.of(x));
        } else {
            json.writeNull();
        }
    }

    private void estimate(String key, Estimate e) throws IOException {
        number(e == null ? null : e.value());
        json.writeFieldName(key + "_se");
        number(e == null || !Double.isFinite(e.value()) ? null : e.standardError());
    }

    private void vector(double[] parts) throws IOException {
        json.writeStartArray();
        for (double part : parts) {
            number(part);
        }
        json.writeEndArray();
    }

    private void texts(Map<?, ?> texts) throws IOException {
        json.writeStartObject();
        for (Map.Entry<?, ?> entry : texts.entrySet()) {
            json.writeStringField((String) entry.getKey(), (String) entry.getValue());
        }
        json.writeEndObject();
    }
}
