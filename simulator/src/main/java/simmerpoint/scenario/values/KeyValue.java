package simmerpoint.scenario.values;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.ValueReader;
import simmerpoint.units.QuantityException;

/**
 * What stands at one key.
 *
 * @param typed as it stands in the file or was typed, without quotes; a default as it would be typed
 * @param value the number in SI units or radians, the word, the text, whether on, the date, time or zone, or the name of the
 *     file; null if what was typed is no value of that key
 * @param deviation standard deviation that a ± means, SI units or radians; empty if nothing is said of that
 * @param line where it stands; 0 for a default or a value that was not written in the file
 */
public record KeyValue(String typed, Object value, OptionalDouble deviation, int line) {
    /** Those that were asked for so far, by path. */
    private static final Map<String, KeyValue> DEFAULTS = new ConcurrentHashMap<>();

    private static KeyValue byDefault(Key key) {
        if (key.kind() == Key.Kind.TEXT && key.defaultText() != null && !key.defaultIsValue()) {
            return new KeyValue("", "", OptionalDouble.empty(), 0);
        }
        if (!key.defaultIsValue()) {
            throw new IllegalArgumentException("no default of " + key.path());
        }
        try {
            return read(key, key.defaultText(), 0);
        } catch (QuantityException e) {
            throw new IllegalStateException("default of " + key.path() + ": " + e.getMessage(), e);
        }
    }

    /** What was typed at a key in that line. */
    static KeyValue read(Key key, String typed, int line) throws QuantityException {
        return new KeyValue(typed, ValueReader.read(key, typed), ValueReader.deviation(key, typed), line);
    }

    /** What was typed is no value of its key. */
    static KeyValue wrong(String typed, int line) {
        return new KeyValue(typed, null, OptionalDouble.empty(), line);
    }

    /** A number that nobody typed, SI units or radians. */
    static KeyValue ofNumber(double si) {
        return new KeyValue("", si, OptionalDouble.empty(), 0);
    }

    /** The default of a key that has one of its own. */
    static KeyValue byDefault(String path) {
        return DEFAULTS.computeIfAbsent(path, p -> byDefault(Keys.get(p)));
    }

    /** Whether the key takes it. */
    boolean isGood() {
        return value != null;
    }

    double number() {
        return ((Number) value).doubleValue();
    }

    int count() {
        return (Integer) value;
    }

    /** The word, text or name of a file. */
    public String text() {
        return (String) value;
    }
}
