package simmerpoint.scenario.keys;

import java.util.List;
import java.util.Optional;
import simmerpoint.scenario.Problem;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.units.InputText;
import simmerpoint.units.QuantityException;

/**
 * What an option of the command line wants a key to be: {@code key=value}.
 *
 * @param option for instance --set; messages name it instead of a file
 * @param key which
 * @param value as typed
 */
public record KeyAssignment(String option, Key key, String value) {
    /**
     * Reads {@code key=value}.
     *
     * @param option it stands behind
     * @param typed the whole of it
     * @param example for messages
     * @throws ScenarioException if there is no such key or no value
     */
    public static KeyAssignment parse(String option, String typed, String example) throws ScenarioException {
        int equals = typed.indexOf('=');
        String path = InputText.normalised(equals < 0 ? typed : typed.substring(0, equals));
        if (path.isEmpty()) {
            throw refused(option, "", "a key is missing; write for instance " + option + " " + example);
        }
        Optional<String> unknown = UnknownKeys.whyUnknown(path);
        if (unknown.isPresent()) {
            throw refused(option, path, unknown.get());
        }
        String value = equals < 0 ? "" : typed.substring(equals + 1);
        KeyAssignment assignment = new KeyAssignment(option, Keys.get(path), value);
        if (value.isBlank()) {
            throw assignment.noValue();
        }
        return assignment;
    }

    /** Says that nothing stands where the value should. */
    public ScenarioException noValue() {
        return refused("no value is given; write for instance " + option + " " + key.path() + "=" + key.example());
    }

    /** The value as it would be typed in the file, if the key takes it. */
    public String checkedValue() throws ScenarioException {
        String typed = InputText.normalised(value);
        read(typed);
        return typed;
    }

    /** What a value of the key means. */
    public Object read(String typed) throws ScenarioException {
        try {
            return ValueReader.read(key, typed);
        } catch (QuantityException e) {
            throw refused(e.getMessage());
        }
    }

    /** Says what is wrong with it. */
    public ScenarioException refused(String text) {
        return refused(option, key.path(), text);
    }

    /** Says what is wrong with a key behind an option. */
    public static ScenarioException refused(String option, String path, String text) {
        return new ScenarioException(option, List.of(new Problem(0, InputText.shown(path), text)));
    }
}
