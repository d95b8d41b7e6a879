package simmerpoint.scenario.checks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.values.ScenarioValues;

/**
 * A scenario made of values that were found good. Knows no text, only values.
 *
 * @param scenario what it means
 * @param values of its keys
 * @param warnings what is allowed and yet probably not meant, one sentence each
 * @param timeless what to say to whoever needs the sun of one moment, if the file names a place and neither a time nor
 *     sun.elevation; the scenario then has the usual sun, good for nothing but days and years
 * @param defaults names of the sections that the file leaves out and whose defaults are taken
 */
public record CheckedScenario(
        Scenario scenario,
        ScenarioValues values,
        List<String> warnings,
        Optional<ScenarioException> timeless,
        List<String> defaults) {
    /** Keeps its own lists. */
    public CheckedScenario {
        warnings = List.copyOf(warnings);
        defaults = List.copyOf(defaults);
    }

    /** What values mean; refused with everything that is wrong with them. */
    public static CheckedScenario of(ScenarioValues values) throws ScenarioException {
        Problems problems = values.problems();
        SunConditions light = sun(values, problems);
        Scenario scenario = scenario(values, light, problems);
        Optional<ScenarioException> timeless =
                light.timeless().map(problem -> new ScenarioException(values.name(), List.of(problem)));
        List<String> warnings = Stream.concat(
                        PlausibilityChecks.of(scenario, timeless.isPresent()).stream(),
                        FinishQuestion.of(values).stream())
                .toList();
        return new CheckedScenario(scenario, values, warnings, timeless, DefaultSections.of(values));
    }

    /** The same without a look at what is plausible, for work that makes many. */
    public static Scenario scenario(ScenarioValues values) throws ScenarioException {
        Problems problems = values.problems();
        return scenario(values, sun(values, problems), problems);
    }

    private static SunConditions sun(ScenarioValues values, Problems problems) throws ScenarioException {
        KeyPresenceChecks.check(values, problems);
        problems.throwIfAny();
        return SunConditionsReader.read(values, problems);
    }

    private static Scenario scenario(ScenarioValues values, SunConditions light, Problems problems)
            throws ScenarioException {
        CrossChecks.check(values, light.elevationRadians(), problems);
        problems.throwIfAny();
        Scenario scenario = new ScenarioBuilder(values, light, problems).build();
        BuiltScenarioChecks.check(scenario, values, problems);
        problems.throwIfAny();
        return scenario;
    }

    /** The same with values set, see {@link ScenarioValues#with}. */
    public CheckedScenario with(Map<String, String> typed) throws ScenarioException {
        return of(values.with(typed));
    }

    /** The text of the file that says so. */
    public String sourceText() {
        return values.sourceText();
    }

    /** The scenario for work that needs the sun of one moment; refused if the file does not say which. */
    public Scenario atOneMoment() throws ScenarioException {
        if (timeless.isPresent()) {
            throw timeless.get();
        }
        return scenario;
    }
}
