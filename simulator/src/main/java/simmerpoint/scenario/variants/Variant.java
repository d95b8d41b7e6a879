package simmerpoint.scenario.variants;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.units.InputText;

/**
 * One of several scenarios that are held against each other.
 *
 * @param file name of the file it comes from, as the user knows it
 * @param source what to call its file among those compared: its title, or else the file's name; empty if there is one
 *     file only
 * @param varied the values that replace those of the file, as typed, by full path, in the order they were asked for
 * @param read the scenario with these values
 */
public record Variant(String file, String source, Map<String, String> varied, CheckedScenario read) {
    /** Keeps its own copy. */
    public Variant {
        varied = Collections.unmodifiableMap(new LinkedHashMap<>(varied));
    }

    /** What it means. */
    public Scenario scenario() {
        return read.scenario();
    }

    /** The values as they were asked for: "dish.hub=2 m, dish.gap=1 mm". */
    public String assignments() {
        return assignments(varied);
    }

    static String assignments(Map<String, String> varied) {
        return varied.entrySet().stream()
                .map(e -> e.getKey() + "=" + InputText.shown(e.getValue()))
                .collect(Collectors.joining(", "));
    }
}
