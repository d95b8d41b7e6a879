package simmerpoint.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import simmerpoint.units.Spaces;

/** Keys of a file that no longer belong when another cut or kind is chosen beside it. */
final class Strangers {
    private Strangers() {}

    /** Of the paths given in a file, those that the overrides make strangers. */
    static List<String> of(Set<String> given, Map<String, String> overrides) {
        return given.stream()
                .filter(path -> !overrides.containsKey(path))
                .filter(path -> Keys.find(path)
                        .filter(key -> isStranger(key, overrides))
                        .isPresent())
                .toList();
    }

    private static boolean isStranger(Key key, Map<String, String> overrides) {
        String chooser = Keys.CHOOSERS.get(key.section());
        if (chooser == null || key.onlyFor().isEmpty() || !overrides.containsKey(chooser)) {
            return false;
        }
        String chosen = Spaces.normalised(overrides.get(chooser));
        Optional<String> word = Keys.find(chooser).orElseThrow().words().stream()
                .filter(w -> w.equalsIgnoreCase(chosen))
                .findFirst();
        return word.isPresent() && !key.onlyFor().contains(word.get());
    }
}
