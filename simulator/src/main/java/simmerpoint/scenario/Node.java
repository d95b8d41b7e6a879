package simmerpoint.scenario;

import java.util.LinkedHashMap;
import java.util.Map;

/** What stands in the file, with the line of everything; values are still the text that was typed. */
sealed interface Node {
    /** Line of the file, from 1; 0 if it was not written in the file. */
    int line();

    /**
     * One value.
     *
     * @param text as typed, without quotes
     * @param line where it stands
     * @param plain whether it was typed without quotes
     */
    record Scalar(String text, int line, boolean plain) implements Node {
        /** Whether nothing (or YAML's null) was typed. */
        boolean isNothing() {
            return plain && (text.isEmpty() || text.equals("~") || text.equalsIgnoreCase("null"));
        }
    }

    /**
     * A list, which no key takes.
     *
     * @param line where it begins
     */
    record Listing(int line) implements Node {}

    /**
     * Keys and what stands under them.
     *
     * @param line where it begins
     * @param entries in the order of the file
     */
    record Section(int line, Map<String, Entry> entries) implements Node {
        static Section empty(int line) {
            return new Section(line, new LinkedHashMap<>());
        }
    }

    /**
     * One key of a section.
     *
     * @param keyLine where the key stands
     * @param node what stands under it
     */
    record Entry(int keyLine, Node node) {}
}
