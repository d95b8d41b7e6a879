package simmerpoint.scenario.variants;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import simmerpoint.scenario.keys.CutKeys;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.InputText;

/**
 * Every combination of the values of varied keys. Where a key that chooses others ({@link Keys#CHOOSERS}: cut, kind) is
 * varied itself, keys that do not belong to what is chosen are left out of that combination, and combinations that become
 * the same appear once: {@code cut=smooth,flat-rings} with {@code sectors=12,24} are three. So are figures that a varied cut has
 * no room for, such as the panel tilt of a smooth dish.
 */
final class VariantCombinations {
    private VariantCombinations() {}

    /** How many combinations there are at most: the plain product. */
    static long size(List<VariedKey> keys) {
        long size = 1;
        for (VariedKey key : keys) {
            size = Math.min(Integer.MAX_VALUE, size * key.values().size());
        }
        return size;
    }

    /** The combinations, value by path; those of the last key change fastest. One without keys if none is varied. */
    static List<Map<String, String>> of(List<VariedKey> keys) {
        List<Map<String, String>> all = new ArrayList<>();
        all.add(Map.of());
        for (VariedKey key : keys) {
            List<Map<String, String>> longer = new ArrayList<>();
            for (Map<String, String> some : all) {
                for (String value : key.values()) {
                    Map<String, String> more = new LinkedHashMap<>(some);
                    more.put(key.path(), value);
                    longer.add(more);
                }
            }
            all = longer;
        }
        Set<Map<String, String>> different = new LinkedHashSet<>();
        all.forEach(combination -> different.add(belonging(combination)));
        return List.copyOf(different);
    }

    private static Map<String, String> belonging(Map<String, String> combination) {
        Map<String, String> out = new LinkedHashMap<>(combination);
        out.keySet().removeIf(path -> {
            Key key = Keys.get(path);
            boolean applies = word(combination, Keys.CHOOSERS.get(key.section()))
                    .map(key::isFor)
                    .orElse(true);
            return !applies || inapplicable(combination).contains(path);
        });
        return out;
    }

    /** Keys that the combination's own cut has no room for. */
    private static List<String> inapplicable(Map<String, String> combination) {
        return word(combination, CutKeys.CUT).map(CutKeys::inapplicable).orElse(List.of());
    }

    private static Optional<String> word(Map<String, String> combination, String path) {
        return Optional.ofNullable(path)
                .map(combination::get)
                .map(typed -> InputText.normalised(typed).toLowerCase(Locale.ROOT));
    }

    /** The combination, and nothing where a varied cut has no room for what the file may say. */
    static Map<String, String> overrides(Map<String, String> combination) {
        Map<String, String> out = new LinkedHashMap<>(combination);
        inapplicable(combination).forEach(path -> out.put(path, Keys.get(path).defaultText()));
        return out;
    }
}
