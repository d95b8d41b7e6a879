package simmerpoint.viewer.yard;

import java.nio.file.Path;
import java.util.Map;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;

/** A plain dish whose sun comes from place and time. */
final class ScenarioOfPlace {
    private static final String DISH = "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\n";

    private ScenarioOfPlace() {}

    static Scenario read(Map<String, String> keys) throws ScenarioException {
        return ScenarioReader.parse("plain", DISH, Path.of("")).with(keys).scenario();
    }
}
