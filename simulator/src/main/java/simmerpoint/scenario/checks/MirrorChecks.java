package simmerpoint.scenario.checks;

import java.util.List;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.keys.MirrorKeys;
import simmerpoint.scenario.values.ScenarioValues;

/** What must hold between the keys of {@code mirror}. */
final class MirrorChecks {
    private static final List<String> OWN = List.of("mirror.reflectance", "mirror.slope-error");

    private MirrorChecks() {}

    static void check(ScenarioValues values, Problems problems) {
        if (values.text("mirror.material").equals(MirrorKeys.OWN_FIGURES)) {
            OWN.stream().filter(path -> !values.has(path)).forEach(path -> missing(path, values, problems));
        }
    }

    private static void missing(String path, ScenarioValues values, Problems problems) {
        Key key = Keys.get(path);
        problems.add(
                values.line("mirror.material"),
                path,
                "own figures need it; write for instance " + key.name() + ": " + key.example());
    }
}
