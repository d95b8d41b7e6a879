package simmerpoint.scenario.variants;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.scenario.values.KeyValue;
import simmerpoint.scenario.values.ScenarioValues;

/**
 * A key that does not say the same in all of several scenarios.
 *
 * @param key which; never the title
 * @param values what it says in each, as typed or by default; {@link #NOTHING} where it does not belong
 */
public record DifferingKey(Key key, List<String> values) {
    /** Stands for a key that does not belong to a scenario. */
    public static final String NOTHING = "\u2013";

    /** Keeps its own copy. */
    public DifferingKey {
        values = List.copyOf(values);
    }

    /** Each text once, in order. */
    public List<String> different() {
        return values.stream().distinct().toList();
    }

    /** The keys in which {@code variants} differ, in the order of the file. */
    public static List<DifferingKey> of(List<Variant> variants) {
        List<ScenarioValues> all =
                variants.stream().map(variant -> variant.read().values()).toList();
        List<DifferingKey> out = new ArrayList<>();
        for (Key key : Keys.all()) {
            List<Said> said = all.stream().map(values -> said(key, values)).toList();
            long meanings = said.stream().map(Said::meaning).distinct().count();
            if (meanings > 1 && !key.path().equals("title")) {
                out.add(new DifferingKey(key, said.stream().map(Said::text).toList()));
            }
        }
        return List.copyOf(out);
    }

    /** What a key says: the meaning decides whether two are the same, the text is shown. */
    private record Said(Object meaning, String text) {}

    private static Said said(Key key, ScenarioValues values) {
        if (values.has(key.path())) {
            KeyValue value = values.get(key.path());
            Object meaning = key.kind() == Key.Kind.FILE ? Path.of(value.text()).normalize() : value.value();
            return new Said(meaning, values.shown(key.path()));
        }
        if (!belongs(key, values)) {
            return new Said(NOTHING, NOTHING);
        }
        return key.defaultIsValue()
                ? new Said(values.get(key.path()).value(), key.defaultText())
                : new Said(key.defaultText(), key.defaultText());
    }

    /** Whether a key that is not given has a default that counts. */
    private static boolean belongs(Key key, ScenarioValues values) {
        String chooser = Keys.CHOOSERS.get(key.section());
        boolean known =
                chooser == null || values.has(chooser) || !Keys.get(chooser).required();
        boolean chosen = known && (chooser == null || key.isFor(values.text(chooser)));
        return chosen && key.defaultText() != null && !leftOut(key, values);
    }

    /** Sections without effect: a pan's where there is a bare disc, a place's where none is named, the sun's own figures there. */
    private static boolean leftOut(Key key, ScenarioValues values) {
        boolean placed = values.hasSection("place");
        boolean bare = values.hasSection("plane");
        if (ZoneKeys.zoneOf(key.path())
                .filter(zone -> !values.hasSection(ZoneKeys.section(zone)))
                .isPresent()) {
            return true;
        }
        return switch (key.section()) {
            case "plane" -> !bare;
            case "pan", "air", "heat-levels" -> bare;
            case "place" -> !placed;
            case "when", "sky" -> !placed || !values.hasSection("when");
            case "sun" -> placed && values.hasSection("when");
            default -> false;
        };
    }
}
