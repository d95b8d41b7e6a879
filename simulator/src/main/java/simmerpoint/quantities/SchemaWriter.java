package simmerpoint.quantities;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import simmerpoint.quantities.Field.Group;
import simmerpoint.quantities.Field.Quantity;
import simmerpoint.quantities.Field.Rows;

/** Writes the JSON Schema (draft 2020-12) of a document: every field is there, and no other. */
final class SchemaWriter {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private SchemaWriter() {}

    static String text(Document<?> document) {
        ObjectNode schema = NODES.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "Simmerpoint " + document.command());
        schema.setAll(object(document.whole()));
        try {
            return new ObjectMapper().writer(JsonWriter.printer()).writeValueAsString(schema) + "\n";
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ObjectNode object(Fields<?> fields) {
        ObjectNode object = NODES.objectNode().put("type", "object");
        ObjectNode properties = object.putObject("properties");
        fields.all().forEach(field -> properties(properties, field));
        ArrayNode required = object.putArray("required");
        properties.fieldNames().forEachRemaining(required::add);
        return object.put("additionalProperties", false);
    }

    private static void properties(ObjectNode properties, Field<?> field) {
        if (field instanceof Quantity<?> quantity) {
            quantity(properties, quantity);
        } else if (field instanceof Group<?, ?> group) {
            put(properties, group, object(group.fields()));
        } else if (field instanceof Rows<?, ?> rows) {
            ObjectNode list = NODES.objectNode().put("type", "array");
            list.set("items", object(rows.fields()));
            put(properties, rows, list);
        }
    }

    private static void quantity(ObjectNode properties, Quantity<?> quantity) {
        String unit = quantity.unit().map(u -> ", " + u.sign()).orElse("");
        ObjectNode schema = NODES.objectNode().put("description", quantity.label() + unit);
        properties.set(quantity.key(), schema);
        switch (quantity.type()) {
            case NUMBER -> type(schema, "number", true);
            case ESTIMATE -> {
                type(schema, "number", true);
                ObjectNode error = properties.putObject(quantity.key() + "_se");
                type(error.put("description", "standard error of " + quantity.key() + unit), "number", true);
            }
            case VECTOR -> type(type(schema, "array", quantity.nullable()).putObject("items"), "number", true);
            case WHOLE -> type(schema, "integer", quantity.nullable());
            case FLAG -> type(schema, "boolean", quantity.nullable());
            case TEXT -> words(type(schema, "string", quantity.nullable()), quantity);
            case TIME -> type(schema, "string", quantity.nullable()).put("format", "date-time");
            case DATE -> type(schema, "string", quantity.nullable()).put("format", "date");
            case TEXTS ->
                type(schema, "object", quantity.nullable())
                        .putObject("additionalProperties")
                        .put("type", "string");
        }
    }

    private static void words(ObjectNode schema, Quantity<?> quantity) {
        if (!quantity.words().isEmpty()) {
            ArrayNode words = schema.putArray("enum");
            quantity.words().forEach(words::add);
            if (quantity.nullable()) {
                words.addNull();
            }
        }
    }

    private static void put(ObjectNode properties, Field<?> field, ObjectNode schema) {
        type(schema, schema.get("type").asText(), field.nullable());
        properties.set(field.key(), schema.put("description", field.label()));
    }

    private static ObjectNode type(ObjectNode schema, String type, boolean nullable) {
        if (nullable) {
            schema.putArray("type").add(type).add("null");
        } else {
            schema.put("type", type);
        }
        return schema;
    }
}
