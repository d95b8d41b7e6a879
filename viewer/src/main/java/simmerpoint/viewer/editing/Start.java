package simmerpoint.viewer.editing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.TypedQuantity;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.document.DocumentState;
import simmerpoint.viewer.document.Edit;

/**
 * A sensible answer to a builder's question, taken at a press.
 *
 * @param id unique within the question
 * @param words on its button
 * @param typed values by full path of the key, each as it would be typed
 * @param dropped keys that must not stand beside them
 */
record Start(String id, String words, Map<String, String> typed, List<String> dropped) {
    static Start of(String id, String words, String... pathsAndValues) {
        Map<String, String> typed = new java.util.LinkedHashMap<>();
        for (int k = 0; k < pathsAndValues.length; k += 2) {
            typed.put(pathsAndValues[k], pathsAndValues[k + 1]);
        }
        return new Start(id, words, typed, List.of());
    }

    /** The same in the place of those keys. */
    Start instead(List<String> paths) {
        return new Start(id, words, typed, paths);
    }

    /** One length, round in either system of units. */
    static Start length(String id, String path, String metric, String inch, UnitSystem units) {
        String value = units == UnitSystem.INCH ? inch : metric;
        return of(id, value, path, value);
    }

    Edit edit() {
        return Edit.drop(dropped.toArray(String[]::new)).then(Edit.type(typed));
    }

    /** Whether it holds in a document. */
    boolean holds(DocumentState state) {
        return typed.entrySet().stream()
                        .allMatch(each -> state.typed(each.getKey())
                                .filter(text -> same(each.getKey(), text, each.getValue()))
                                .isPresent())
                && dropped.stream().noneMatch(path -> state.typed(path).isPresent());
    }

    /** Whether two texts mean the same: 1.2 m and 1.20 m do. */
    private static boolean same(String path, String one, String other) {
        Key key = Keys.find(path).orElseThrow();
        Optional<TypedQuantity> first = Optional.ofNullable(key.dimension()).flatMap(d -> TypedQuantity.of(one, d));
        Optional<TypedQuantity> second = Optional.ofNullable(key.dimension()).flatMap(d -> TypedQuantity.of(other, d));
        return one.equals(other)
                || (first.isPresent()
                        && second.isPresent()
                        && Math.abs(first.get().si() - second.get().si()) < 1e-9);
    }
}
