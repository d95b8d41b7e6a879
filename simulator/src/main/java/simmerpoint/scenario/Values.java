package simmerpoint.scenario;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import simmerpoint.units.QuantityException;

/** The values of all keys of one scenario: those of the file, and the defaults for the rest. */
final class Values {
    private final Map<String, Value> given = new LinkedHashMap<>();
    private final Map<String, Integer> sectionLines = new HashMap<>();

    void put(Key key, Value value) {
        given.put(key.path(), value);
    }

    void putSection(String path, int line) {
        sectionLines.put(path, line);
    }

    void remove(String path) {
        given.remove(path);
    }

    boolean has(String path) {
        return given.containsKey(path);
    }

    boolean hasSection(String path) {
        return sectionLines.containsKey(path);
    }

    /** Line of the key's own entry, or of the nearest section around it; 0 if there is none. */
    int line(String path) {
        if (given.containsKey(path)) {
            return given.get(path).line();
        }
        if (sectionLines.containsKey(path)) {
            return sectionLines.get(path);
        }
        int dot = path.lastIndexOf('.');
        return dot < 0 ? 0 : line(path.substring(0, dot));
    }

    /** The value given or the default; not for keys that have neither. */
    Value get(String path) {
        Value value = given.get(path);
        return value != null ? value : byDefault(path);
    }

    private static Value byDefault(String path) {
        Key key = Keys.find(path).orElseThrow(() -> new IllegalArgumentException("no key " + path));
        try {
            boolean emptyText = key.kind() == Key.Kind.TEXT && key.defaultText().isEmpty();
            Object si = emptyText ? "" : ValueReader.read(key, key.defaultText());
            return new Value(si, key.defaultText(), 0, false);
        } catch (QuantityException e) {
            throw new IllegalStateException("default of " + path + ": " + e.getMessage(), e);
        }
    }

    double number(String path) {
        return get(path).number();
    }

    /** The number given, or {@code otherwise}. */
    double number(String path, double otherwise) {
        return given.containsKey(path) ? given.get(path).number() : otherwise;
    }

    int count(String path) {
        return get(path).count();
    }

    boolean isOn(String path) {
        return (Boolean) get(path).si();
    }

    LocalDate date(String path) {
        return (LocalDate) get(path).si();
    }

    LocalTime time(String path) {
        return (LocalTime) get(path).si();
    }

    ZoneId zone(String path) {
        return (ZoneId) get(path).si();
    }

    String text(String path) {
        return get(path).text();
    }
}
