package simmerpoint.scenario.variants;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.keys.KeyAssignment;
import simmerpoint.units.InputText;

/**
 * A key of the scenario file and the values it is to take one after the other.
 *
 * @param path full path of the key
 * @param values each as it would be typed in the file; at least one, no two the same
 */
public record VariedKey(String path, List<String> values) {
    /** What messages name instead of a file. */
    static final String OPTION = "--vary";

    private static final char NONE = 0;

    /** Keeps its own copy. */
    public VariedKey {
        values = List.copyOf(values);
    }

    /**
     * Reads {@code key=value,value,...}. A value that holds a comma stands in double or single quotes, or has a backslash
     * before the comma. Every value is checked as the file's would be.
     *
     * @throws ScenarioException if there is no such key, no value, or one that the key does not take
     */
    public static VariedKey parse(String typed) throws ScenarioException {
        KeyAssignment assignment = KeyAssignment.parse(OPTION, typed, "dish.surface.sectors=12,24");
        List<String> values = parts(assignment);
        if (values.size() == 1 && values.get(0).isEmpty()) {
            throw assignment.noValue();
        }
        check(assignment, values);
        return new VariedKey(assignment.key().path(), values);
    }

    /** What stands between the commas, without quotes, backslashes before commas and spaces around. */
    private static List<String> parts(KeyAssignment assignment) throws ScenarioException {
        String text = assignment.value();
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        char open = NONE;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean escaped = c == '\\' && i + 1 < text.length() && text.charAt(i + 1) == ',';
            if (escaped) {
                part.append(',');
                i++;
            } else if (open == NONE && part.toString().isBlank() && (c == '"' || c == '\'')) {
                open = c;
                part.setLength(0);
            } else if (c == open) {
                open = NONE;
            } else if (c == ',' && open == NONE) {
                parts.add(InputText.normalised(part.toString()));
                part.setLength(0);
            } else {
                part.append(c);
            }
        }
        if (open != NONE) {
            throw assignment.refused("a quotation mark is opened and not closed");
        }
        parts.add(InputText.normalised(part.toString()));
        return parts;
    }

    private static void check(KeyAssignment assignment, List<String> values) throws ScenarioException {
        List<Object> seen = new ArrayList<>();
        for (String value : values) {
            if (value.isEmpty()) {
                throw assignment.refused("there is nothing between two commas or at an end; leave the comma out");
            }
            Object meaning = assignment.read(value);
            if (seen.contains(meaning)) {
                String before = values.get(seen.indexOf(meaning));
                String same = before.equals(value) ? "" : " (" + InputText.shown(before) + " is the same)";
                throw assignment.refused(InputText.shown(value) + " is given twice" + same);
            }
            seen.add(meaning);
        }
    }
}
