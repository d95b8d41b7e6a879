package simmerpoint.scenario;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.error.YAMLException;
import simmerpoint.units.InputText;

/**
 * Changes keys in the text of a scenario file. Comments, order and layout of everything else stay as they are: a value is
 * replaced where it stands, a new key is put into its section, a section that was missing is made. Text that cannot be
 * changed so (keys of the rare form {@code ? key}) is written anew, key by key.
 */
final class ScenarioWriter {
    private ScenarioWriter() {}

    /**
     * The text with values replaced or added and others taken out. Values are not checked, but written so that they are read
     * back as they are. A section that is left without keys goes too.
     *
     * @param sourceText a scenario that the reader takes, but perhaps for the values replaced here
     * @param changed value by full path of the key, each as it would be typed in the file
     * @param removed full paths of keys or sections; what the text does not have is passed over
     * @throws IllegalArgumentException if the text is no YAML that a scenario may use, or a key is not known
     */
    static String write(String sourceText, Map<String, String> changed, Collection<String> removed) {
        Map<String, String> wanted = values(sourceText);
        String text = body(sourceText);
        for (Map.Entry<String, String> change : changed.entrySet()) {
            Key key = Keys.get(change.getKey());
            put(wanted, key.path(), change.getValue());
            text = SourceEdit.put(text, key, change.getValue());
        }
        for (String path : removed) {
            text = SourceEdit.remove(text, path);
            remove(wanted, path);
        }
        return mark(sourceText) + (says(text, wanted) ? text : anew(wanted));
    }

    /**
     * Every value of the text by full path, as typed there; what is wrong with them is not asked.
     *
     * @throws IllegalArgumentException if the text is no YAML that a scenario may use
     */
    static Map<String, String> values(String sourceText) {
        Problems problems = new Problems("the scenario");
        try {
            YamlText.read(sourceText, problems);
            return SourceTree.values(SourceTree.read(body(sourceText)));
        } catch (ScenarioException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    private static void put(Map<String, String> values, String path, String typed) {
        for (int dot = path.indexOf('.'); dot > 0; dot = path.indexOf('.', dot + 1)) {
            values.remove(path.substring(0, dot));
        }
        remove(values, path);
        values.put(path, typed);
    }

    private static void remove(Map<String, String> values, String path) {
        values.keySet().removeIf(key -> key.equals(path) || key.startsWith(path + "."));
    }

    private static boolean says(String text, Map<String, String> wanted) {
        try {
            Map<String, String> found = SourceTree.values(SourceTree.read(text));
            return normalised(found).equals(normalised(wanted));
        } catch (YAMLException | ClassCastException e) {
            return false;
        }
    }

    private static Map<String, String> normalised(Map<String, String> values) {
        Map<String, String> normalised = new LinkedHashMap<>();
        values.forEach((path, typed) -> normalised.put(path, InputText.normalised(typed)));
        return normalised;
    }

    private static String anew(Map<String, String> values) {
        String text = "{}\n";
        List<Key> keys = new ArrayList<>(Keys.all());
        for (Key key : keys) {
            Optional<String> typed = Optional.ofNullable(values.get(key.path()));
            if (typed.isPresent()) {
                text = text.equals("{}\n") ? first(key, typed.get()) : SourceEdit.put(text, key, typed.get());
            }
        }
        return text;
    }

    private static String first(Key key, String typed) {
        return SourceInsertion.inBrackets(List.of(key.path().split("\\.")), YamlScalar.of(key, typed)) + "\n";
    }

    /** The mark that some editors put before the first letter. */
    private static String mark(String text) {
        return text.startsWith("\uFEFF") ? "\uFEFF" : "";
    }

    private static String body(String text) {
        return text.substring(mark(text).length());
    }
}
