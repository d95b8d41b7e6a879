package simmerpoint.scenario.keys;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The one description of every key of the scenario file, in the order of the file. Reader, checker, help and whoever
 * varies or edits a scenario take names, units, ranges, defaults and explanations from here.
 */
public final class Keys {
    /** The keys that choose which of their section's other keys belong. */
    public static final Map<String, String> CHOOSERS = choosers();

    /** Sections that may be left out although some of their keys have no default. */
    public static final Set<String> OPTIONAL = optional();

    private static final List<Key> ALL = KeyTable.keys();
    private static final Map<String, Key> BY_PATH = byPath();
    private static final Set<String> SECTIONS = sections(ALL);

    private Keys() {}

    private static Map<String, String> choosers() {
        Map<String, String> choosers = new LinkedHashMap<>(Map.of(
                "dish.surface",
                "dish.surface.cut",
                "dish.rim",
                "dish.rim.shape",
                "dish.covered",
                "dish.covered.part",
                "sun.shape",
                "sun.shape.kind",
                "sky",
                "sky.kind"));
        ZoneKeys.NAMES.forEach(
                zone -> choosers.put(ZoneKeys.path(zone, "dish.surface"), ZoneKeys.path(zone, "dish.surface.cut")));
        return Collections.unmodifiableMap(choosers);
    }

    private static Set<String> optional() {
        Set<String> optional = new LinkedHashSet<>(List.of(
                "place",
                "when",
                "sky",
                "as-built",
                "look-at.bracket",
                "look-at.arm",
                "look-at.handle",
                "look-at.wall",
                "look-at.grass",
                "look-at.bench"));
        optional.addAll(ZoneKeys.sections());
        return Collections.unmodifiableSet(optional);
    }

    private static Map<String, Key> byPath() {
        Map<String, Key> map = new TreeMap<>();
        ALL.forEach(key -> map.put(key.path(), key));
        return map;
    }

    private static Set<String> sections(List<Key> keys) {
        Set<String> sections = new LinkedHashSet<>();
        for (Key key : keys) {
            String path = key.section();
            for (int dot = path.indexOf('.'); dot > 0; dot = path.indexOf('.', dot + 1)) {
                sections.add(path.substring(0, dot));
            }
            sections.add(path);
        }
        return sections;
    }

    /** Every key in the order of the file. */
    public static List<Key> all() {
        return ALL;
    }

    /** The key of that full path. */
    public static Optional<Key> find(String path) {
        return Optional.ofNullable(BY_PATH.get(path));
    }

    /** The key of that full path, which there is. */
    public static Key get(String path) {
        return find(path).orElseThrow(() -> new IllegalArgumentException("no key " + path));
    }

    /** Whether other keys stand under that path; the empty path is the whole file. */
    public static boolean isSection(String path) {
        return SECTIONS.contains(path);
    }

    /** Names of keys and sections directly under a section, in the order of the file. */
    public static List<String> namesIn(String section) {
        String prefix = section.isEmpty() ? "" : section + ".";
        Set<String> names = new LinkedHashSet<>();
        for (Key key : ALL) {
            if (key.path().startsWith(prefix)) {
                String rest = key.path().substring(prefix.length());
                names.add(rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest);
            }
        }
        return List.copyOf(names);
    }

    /** Path of the key that chooses which of a section's other keys belong, if it has one: cut or kind. */
    public static Optional<String> chooserOf(String section) {
        return Optional.ofNullable(CHOOSERS.get(section));
    }

    /** The keys that mean nothing beside that word of a section's choosing key: sectors beside {@code cut: smooth}. */
    public static List<Key> inapplicableTo(String chooser, String word) {
        return ALL.stream()
                .filter(key -> chooser.equals(CHOOSERS.get(key.section())))
                .filter(key -> !key.isFor(word))
                .toList();
    }

    /** Of all full paths the one nearest to {@code path}. */
    public static Optional<String> nearest(String path) {
        return NearestWord.of(path, BY_PATH.keySet());
    }
}
