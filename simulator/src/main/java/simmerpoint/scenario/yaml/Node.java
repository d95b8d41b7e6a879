package simmerpoint.scenario.yaml;

import java.util.LinkedHashMap;
import java.util.Map;

/** What stands in a text and where: values are still the text that was typed. */
public sealed interface Node {
    /** Its place. */
    Span span();

    /**
     * A piece of the text.
     *
     * @param line in which it begins, from 1
     * @param start its first character
     * @param end behind its last character that is no space
     */
    record Span(int line, int start, int end) {
        /** Whether there is no text. */
        public boolean isEmpty() {
            return start == end;
        }
    }

    /**
     * One value.
     *
     * @param text as typed, without quotes
     * @param span where it stands, with its quotes
     * @param plain whether it was typed without quotes
     */
    record Scalar(String text, Span span, boolean plain) implements Node {
        /** Whether nothing (or YAML's null) was typed. */
        public boolean isNothing() {
            return plain && (text.isEmpty() || text.equals("~") || text.equalsIgnoreCase("null"));
        }
    }

    /**
     * A list, which no key takes.
     *
     * @param span where it stands
     */
    record Listing(Span span) implements Node {}

    /**
     * Keys and what stands under them.
     *
     * @param span from its bracket or first key to its bracket or last value
     * @param flow whether it stands in brackets
     * @param entries by name, in the order of the text
     */
    record Section(Span span, boolean flow, Map<String, Entry> entries) implements Node {}

    /**
     * One key of a section.
     *
     * @param name of the key
     * @param span from the key to the end of its value, or of the key itself if it has none
     * @param node what stands under it
     */
    record Entry(String name, Span span, Node node) {}

    /** Every value by full path; a list as "[]", a section without keys as "{}". */
    static Map<String, String> values(Section root) {
        Map<String, String> values = new LinkedHashMap<>();
        collect("", root, values);
        return values;
    }

    private static void collect(String prefix, Section section, Map<String, String> values) {
        for (Entry entry : section.entries().values()) {
            String path = prefix + entry.name();
            if (entry.node() instanceof Section inner && !inner.entries().isEmpty()) {
                collect(path + ".", inner, values);
            } else if (entry.node() instanceof Scalar scalar) {
                values.put(path, scalar.text());
            } else {
                values.put(path, entry.node() instanceof Listing ? "[]" : "{}");
            }
        }
    }
}
