package simmerpoint.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.units.InputText;
import simmerpoint.units.QuantityException;

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
        int equals = typed.indexOf('=');
        String path = InputText.normalised(equals < 0 ? typed : typed.substring(0, equals));
        if (path.isEmpty()) {
            throw refused("", "a key is missing; write for instance " + OPTION + " dish.surface.sectors=12,24");
        }
        Optional<String> unknown = UnknownKeys.whyUnknown(path);
        if (unknown.isPresent()) {
            throw refused(path, unknown.get());
        }
        Key key = Keys.get(path);
        List<String> values = parts(path, equals < 0 ? "" : typed.substring(equals + 1));
        if (values.size() == 1 && values.get(0).isEmpty()) {
            throw refused(path, "no value is given; write for instance " + OPTION + " " + path + "=" + key.example());
        }
        check(key, values);
        return new VariedKey(path, values);
    }

    static ScenarioException refused(String path, String text) {
        return new ScenarioException(OPTION, List.of(new Problem(0, InputText.shown(path), text)));
    }

    /** What stands between the commas, without quotes, backslashes before commas and spaces around. */
    private static List<String> parts(String path, String text) throws ScenarioException {
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
            throw refused(path, "a quotation mark is opened and not closed");
        }
        parts.add(InputText.normalised(part.toString()));
        return parts;
    }

    private static void check(Key key, List<String> values) throws ScenarioException {
        List<Object> seen = new ArrayList<>();
        for (String value : values) {
            if (value.isEmpty()) {
                throw refused(key.path(), "there is nothing between two commas or at an end; leave the comma out");
            }
            Object si;
            try {
                si = ValueReader.read(key, value);
            } catch (QuantityException e) {
                throw refused(key.path(), e.getMessage());
            }
            if (seen.contains(si)) {
                String before = values.get(seen.indexOf(si));
                String same = before.equals(value) ? "" : " (" + InputText.shown(before) + " is the same)";
                throw refused(key.path(), InputText.shown(value) + " is given twice" + same);
            }
            seen.add(si);
        }
    }
}
