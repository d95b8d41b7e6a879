package simmerpoint.scenario;

import java.util.List;
import java.util.Optional;

/** Makes a scenario of values, or says everything that is wrong with them. Knows no text: only values. */
final class ScenarioCheck {
    private ScenarioCheck() {}

    static ReadScenario of(ScenarioValues values) throws ScenarioException {
        Problems problems = values.problems();
        KeyPresence.check(values, problems);
        problems.throwIfAny();
        DayLight light = DayLightReader.read(values, problems);
        CrossChecks.check(values, light.elevationRadians(), problems);
        problems.throwIfAny();
        Scenario scenario = new ScenarioBuilder(values, light, problems).build();
        MeshChecks.check(scenario.dish(), values, problems);
        TileChecks.check(scenario.dish(), values, problems);
        WorkmanshipChecks.check(scenario, values, problems);
        problems.throwIfAny();
        Optional<ScenarioException> timeless =
                light.timeless().map(problem -> new ScenarioException(values.name(), List.of(problem)));
        List<String> warnings = Warnings.of(scenario, timeless.isPresent());
        return new ReadScenario(scenario, values, warnings, timeless, Defaults.of(values));
    }
}
