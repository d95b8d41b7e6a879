package simmerpoint.viewer.editing;

import java.util.Optional;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.InputText;
import simmerpoint.viewer.document.DocumentState;

/** Which word holds at a key of choice: as typed, or the default. */
final class ChosenWord {
    private ChosenWord() {}

    /** The word; empty if what was typed is none, or a default is taken from elsewhere. */
    static Optional<String> word(DocumentState state, Key key) {
        String typed = InputText.normalised(
                state.typed(key.path()).orElse(key.defaultText() == null ? "" : key.defaultText()));
        return key.words().stream().filter(word -> word.equalsIgnoreCase(typed)).findFirst();
    }

    /** The word at a path. */
    static String word(DocumentState state, String path) {
        return word(state, Keys.find(path).orElseThrow()).orElse("");
    }
}
