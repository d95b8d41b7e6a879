package simmerpoint.scenario;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.units.InputText;

/** Keys of a file that no longer belong when another cut, kind or mirror material is chosen beside it. */
final class Strangers {
    private Strangers() {}

    /** Of the values given in a file, by path, those that the overrides make strangers. */
    static List<String> of(Map<String, String> given, Map<String, String> overrides) {
        String material = given.getOrDefault("mirror.material", MirrorKeys.DEFAULT_MATERIAL);
        boolean figures = Overrides.bringFigures(overrides, material);
        return given.keySet().stream()
                .filter(path -> !overrides.containsKey(path))
                .filter(path -> Keys.find(path)
                        .filter(key -> isStranger(key, overrides) || (figures && Overrides.isFigure(key)))
                        .isPresent())
                .toList();
    }

    private static boolean isStranger(Key key, Map<String, String> overrides) {
        String chooser = Keys.CHOOSERS.get(key.section());
        if (chooser == null || key.onlyFor().isEmpty() || !overrides.containsKey(chooser)) {
            return false;
        }
        String chosen = InputText.normalised(overrides.get(chooser));
        Optional<String> word = Keys.find(chooser).orElseThrow().words().stream()
                .filter(w -> w.equalsIgnoreCase(chosen))
                .findFirst();
        return word.isPresent() && !key.onlyFor().contains(word.get());
    }
}
