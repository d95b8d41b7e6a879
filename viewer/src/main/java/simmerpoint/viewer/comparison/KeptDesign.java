package simmerpoint.viewer.comparison;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import simmerpoint.quantities.OneLine;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.viewer.document.Edit;
import simmerpoint.viewer.document.ScenarioDocument;

/**
 * A kept design, for comparison.
 *
 * @param read the scenario
 */
record KeptDesign(CheckedScenario read) {
    /** The scenario of a document. */
    static KeptDesign of(ScenarioDocument document) {
        return new KeptDesign(document.readProperty().get());
    }

    /** Its title; empty if it has none. */
    String title() {
        return OneLine.of(read.scenario().title());
    }

    /** The same for comparing, under a name. */
    Variant variant(String name) {
        return new Variant(name, name, Map.of(), read);
    }

    /** What makes this design of one that lies in {@code there} and says {@code now}; the text's comments stay. */
    Edit from(Map<String, String> now, Path there) {
        Map<String, String> wanted =
                read.values().movedTo(read.values().name(), there).typed();
        Set<String> dropped = new LinkedHashSet<>();
        for (String path : now.keySet()) {
            if (!wanted.containsKey(path)) {
                boolean section = wanted.keySet().stream()
                        .anyMatch(other -> section(other).equals(section(path)));
                dropped.add(section ? path : section(path));
            }
        }
        Map<String, String> typed = new LinkedHashMap<>(wanted);
        typed.entrySet().removeIf(e -> e.getValue().equals(now.get(e.getKey())));
        return new Edit(typed, dropped);
    }

    private static String section(String path) {
        int dot = path.lastIndexOf('.');
        return dot < 0 ? path : path.substring(0, dot);
    }
}
