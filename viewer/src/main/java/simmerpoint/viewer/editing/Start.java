package simmerpoint.viewer.editing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.ZoneKeys;
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
 * @param dropped keys and sections that must not stand beside them
 * @param zones whether it holds as soon as the dish has these zones and no other, whatever their values
 */
record Start(String id, String words, Map<String, String> typed, List<String> dropped, boolean zones) {
    static Start of(String id, String words, String... pathsAndValues) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (int k = 0; k < pathsAndValues.length; k += 2) {
            typed.put(pathsAndValues[k], pathsAndValues[k + 1]);
        }
        return new Start(id, words, typed, List.of(), false);
    }

    /** The same with one more value. */
    Start and(String path, String value) {
        Map<String, String> more = new LinkedHashMap<>(typed);
        more.put(path, value);
        return new Start(id, words, more, dropped, zones);
    }

    /** The same as an answer about zones. */
    Start asZones() {
        return new Start(id, words, typed, dropped, true);
    }

    /** A length to be typed, in whole short units. */
    static String written(double metres, UnitSystem units) {
        return Math.max(1, Math.round(metres / units.shortUnitMetres())) + " " + units.shortUnit();
    }

    /** The same in the place of those keys. */
    Start instead(List<String> paths) {
        return new Start(id, words, typed, paths, zones);
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
        if (zones) {
            return ZoneKeys.NAMES.stream()
                    .allMatch(zone -> state.hasSection(ZoneKeys.section(zone))
                            == typed.keySet().stream()
                                    .anyMatch(path -> ZoneKeys.zoneOf(path)
                                            .filter(zone::equals)
                                            .isPresent()));
        }
        return typed.entrySet().stream()
                        .allMatch(each -> state.typed(each.getKey())
                                .filter(text -> same(each.getKey(), text, each.getValue()))
                                .isPresent())
                && dropped.stream().noneMatch(path -> state.typed(path).isPresent() || state.hasSection(path));
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
