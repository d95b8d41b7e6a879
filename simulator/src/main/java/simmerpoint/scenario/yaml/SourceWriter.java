package simmerpoint.scenario.yaml;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.InputText;

/**
 * Changes keys in the text of a scenario file. Comments, order and layout of everything else stay as they are: a value is
 * replaced where it stands, a new key is put into its section, a section that was missing is made. Text that cannot be
 * changed so (keys of the rare form {@code ? key}) is written anew, key by key.
 */
public final class SourceWriter {
    private SourceWriter() {}

    /**
     * The text with values replaced or added and others taken out. Values are not checked, but written so that they are read
     * back as they are. A section that is left without keys goes too.
     *
     * @param sourceText a scenario that the reader takes, but perhaps for the values replaced here
     * @param changed value by full path of the key, each as it would be typed in the file
     * @param removed full paths of keys or sections; what the text does not have is passed over
     * @throws IllegalArgumentException if the text is no YAML that a scenario may use, or a key is not known
     */
    public static String write(String sourceText, Map<String, String> changed, Collection<String> removed) {
        Map<String, String> wanted = values(sourceText);
        changed.forEach((path, typed) -> put(wanted, Keys.get(path).path(), typed));
        removed.forEach(path -> remove(wanted, path));
        String mark = YamlText.mark(sourceText);
        String text = sourceText.substring(mark.length());
        return mark
                + edited(text, changed, removed)
                        .filter(edited -> says(edited, wanted))
                        .orElseGet(() -> anew(wanted));
    }

    /**
     * Every value of the text by full path, as typed there; what is wrong with them is not asked.
     *
     * @throws IllegalArgumentException if the text is no YAML that a scenario may use
     */
    public static Map<String, String> values(String sourceText) {
        try {
            return Node.values(SourceEdit.root(sourceText));
        } catch (ScenarioException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /** The text changed in place; empty if its layout does not allow that. */
    private static Optional<String> edited(String text, Map<String, String> changed, Collection<String> removed) {
        try {
            String edited = text;
            for (Map.Entry<String, String> change : changed.entrySet()) {
                edited = SourceEdit.put(edited, Keys.get(change.getKey()), change.getValue());
            }
            for (String path : removed) {
                edited = SourceEdit.remove(edited, path);
            }
            return Optional.of(edited);
        } catch (ScenarioException e) {
            return Optional.empty();
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
            return normalised(Node.values(SourceEdit.root(text))).equals(normalised(wanted));
        } catch (ScenarioException e) {
            return false;
        }
    }

    private static Map<String, String> normalised(Map<String, String> values) {
        Map<String, String> normalised = new LinkedHashMap<>();
        values.forEach((path, typed) -> normalised.put(path, InputText.normalised(typed)));
        return normalised;
    }

    private static String anew(Map<String, String> values) {
        Map<String, String> known = new LinkedHashMap<>();
        Keys.all().stream()
                .filter(key -> values.containsKey(key.path()))
                .forEach(key -> known.put(key.path(), values.get(key.path())));
        if (known.isEmpty()) {
            return "{}\n";
        }
        Key first = Keys.get(known.keySet().iterator().next());
        String value = YamlScalar.of(first, known.remove(first.path()));
        String begun = SourceInsertion.inBrackets(List.of(first.path().split("\\.")), value) + "\n";
        return edited(begun, known, List.of()).orElseThrow();
    }
}
