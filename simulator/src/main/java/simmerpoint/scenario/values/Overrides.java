package simmerpoint.scenario.values;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.MirrorKeys;
import simmerpoint.scenario.keys.UnknownKeys;
import simmerpoint.units.InputText;

/** Sets values of a scenario and takes out the keys that another cut, kind or mirror material makes inapplicable. */
final class Overrides {
    private final ValuesBuilder editor;
    private final Map<String, String> typed;

    private Overrides(ValuesBuilder editor, Map<String, String> typed) {
        this.editor = editor;
        this.typed = typed;
    }

    /** The values with others set, by full path of the key. */
    static ScenarioValues apply(ScenarioValues values, Map<String, String> typed) throws ScenarioException {
        refuseUnknown(values, typed);
        Overrides overrides = new Overrides(new ValuesBuilder(values), typed);
        typed.keySet().stream()
                .filter(MirrorKeys::isMaterial)
                .filter(path -> bringsFigures(values, typed, path))
                .forEach(path -> overrides.remove(MirrorKeys.figuresBeside(path)));
        typed.forEach((path, value) -> overrides.editor.set(Keys.get(path), value));
        Keys.CHOOSERS.values().stream().filter(typed::containsKey).forEach(overrides::removeInapplicable);
        return overrides.editor.values();
    }

    private static void refuseUnknown(ScenarioValues values, Map<String, String> typed) throws ScenarioException {
        for (String path : typed.keySet()) {
            Optional<String> wrong = UnknownKeys.whyUnknown(path);
            if (wrong.isPresent()) {
                throw values.problems().refuse(0, InputText.shown(path), wrong.get());
            }
        }
    }

    /** The figures given beside a material are of that one; another brings its own. */
    private static boolean bringsFigures(ScenarioValues values, Map<String, String> typed, String material) {
        String chosen = typed.get(material);
        String before = values.typed(material).orElse("");
        return !isSameWord(chosen, MirrorKeys.OWN_FIGURES) && !isSameWord(chosen, before);
    }

    private static boolean isSameWord(String a, String b) {
        return InputText.normalised(a).equalsIgnoreCase(InputText.normalised(b));
    }

    private void removeInapplicable(String chooser) {
        KeyValue chosen = editor.given().get(chooser);
        if (chosen.isGood()) {
            remove(Keys.inapplicableTo(chooser, chosen.text()));
        }
    }

    private void remove(List<Key> keys) {
        keys.stream().map(Key::path).filter(path -> !typed.containsKey(path)).forEach(editor::remove);
    }
}
