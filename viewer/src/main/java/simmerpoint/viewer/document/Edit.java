package simmerpoint.viewer.document;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What someone wants changed in a scenario. Keys and sections are taken out first, then values are put in.
 *
 * @param typed values by full path of the key, each as it would be typed in the file
 * @param dropped full paths of keys and sections to be taken out, so that their defaults hold
 */
public record Edit(Map<String, String> typed, Set<String> dropped) {
    /** Nothing is changed. */
    public static final Edit NONE = new Edit(Map.of(), Set.of());

    /** Keeps its own copies, in the same order. */
    public Edit {
        typed = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(typed));
        dropped = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(dropped));
    }

    /** One key gets a value. */
    public static Edit type(String path, String value) {
        return new Edit(Map.of(path, value), Set.of());
    }

    /** Keys get values. */
    public static Edit type(Map<String, String> typed) {
        return new Edit(typed, Set.of());
    }

    /** Keys and sections go back to their defaults. */
    public static Edit drop(String... paths) {
        return new Edit(Map.of(), new LinkedHashSet<>(List.of(paths)));
    }

    /** This and then another one. */
    public Edit then(Edit next) {
        Map<String, String> values = new LinkedHashMap<>(typed);
        values.keySet().removeIf(path -> isUnderAny(path, next.dropped));
        values.putAll(next.typed);
        Set<String> out = new LinkedHashSet<>(dropped);
        out.addAll(next.dropped);
        out.removeAll(values.keySet());
        return new Edit(values, out);
    }

    /** This edit without what it does to those keys. */
    public Edit without(Collection<String> paths) {
        Map<String, String> values = new LinkedHashMap<>(typed);
        values.keySet().removeAll(paths);
        Set<String> out = new LinkedHashSet<>(dropped);
        out.removeAll(paths);
        return new Edit(values, out);
    }

    /** Only what this edit does to those keys. */
    public Edit only(Collection<String> paths) {
        Map<String, String> values = new LinkedHashMap<>(typed);
        values.keySet().retainAll(paths);
        Set<String> out = new LinkedHashSet<>(dropped);
        out.retainAll(paths);
        return new Edit(values, out);
    }

    /** Whether it changes nothing. */
    public boolean isNone() {
        return typed.isEmpty() && dropped.isEmpty();
    }

    /** Whether it says anything of that very key. */
    boolean names(String path) {
        return typed.containsKey(path) || dropped.contains(path);
    }

    /** Whether it takes that key out, alone or with its section. */
    boolean drops(String path) {
        return !typed.containsKey(path) && isUnderAny(path, dropped);
    }

    private static boolean isUnderAny(String path, Set<String> sections) {
        return sections.stream().anyMatch(section -> path.equals(section) || path.startsWith(section + "."));
    }
}
