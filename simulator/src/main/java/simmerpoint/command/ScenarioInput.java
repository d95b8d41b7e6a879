package simmerpoint.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import simmerpoint.scenario.Problem;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.keys.KeyAssignment;
import simmerpoint.scenario.values.ScenarioValues;

/** The scenario that a command answers: a file, standard input or the example, and the values set beside it. */
final class ScenarioInput {
    private static final String OPTION = "--set";
    private static final Path STANDARD_INPUT = Path.of("-");

    @Option(
            names = OPTION,
            arity = "1",
            paramLabel = "KEY=VALUE",
            description = "Set any key of the scenario by its full path, the value as in the file; once for each key.")
    private List<String> set = new ArrayList<>();

    private boolean wasRead;

    /** What a file says with the values set; null is the example that is built in. */
    CheckedScenario read(Path file, Terminal terminal) throws ScenarioException {
        return CheckedScenario.of(values(file, terminal));
    }

    /** The values of a file with those set; null is the example that is built in. */
    ScenarioValues values(Path file, Terminal terminal) throws ScenarioException {
        Map<String, String> typed = set();
        return source(file, terminal).with(typed);
    }

    private ScenarioValues source(Path file, Terminal terminal) throws ScenarioException {
        if (file == null) {
            return ScenarioReader.builtIn().values();
        }
        return isStandardInput(file) ? standardInput(terminal) : ScenarioReader.values(file);
    }

    /** It can be read only once. */
    private ScenarioValues standardInput(Terminal terminal) throws ScenarioException {
        if (wasRead) {
            Problem twice = new Problem(0, "", "this file is named twice; once is enough");
            throw new ScenarioException(ScenarioReader.STANDARD_INPUT, List.of(twice));
        }
        wasRead = true;
        return ScenarioReader.values(terminal.in());
    }

    /** The values set, by full path of the key. */
    private Map<String, String> set() throws ScenarioException {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String each : set) {
            KeyAssignment assignment = KeyAssignment.parse(OPTION, each, "\"dish.hub=60 mm\"");
            if (typed.put(assignment.key().path(), assignment.checkedValue()) != null) {
                throw assignment.refused("this key is set twice; once is enough");
            }
        }
        return typed;
    }

    /** Refuses a key that is set and varied as well. */
    void refuseVaried(String path) throws WrongUse, ScenarioException {
        if (set().containsKey(path)) {
            throw new WrongUse(path + " is set and varied; leave " + OPTION + " out.");
        }
    }

    static boolean isStandardInput(Path file) {
        return STANDARD_INPUT.equals(file);
    }

    /** What to call a scenario in complaints. */
    static String name(Path file) {
        return file == null
                ? ScenarioReader.BUILT_IN
                : isStandardInput(file) ? ScenarioReader.STANDARD_INPUT : file.toString();
    }

    /** What to call a file with that scenario: its own name without folders, or a usual one. */
    static String fileName(Path file) {
        return isStandardInput(file) ? "scenario.yaml" : String.valueOf(file.getFileName());
    }

    /** The file that must not be written over; null if there is none. */
    static Path onDisk(Path file) {
        return file == null || isStandardInput(file) ? null : file;
    }
}
