package simmerpoint.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Parameters;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;

/** A command that answers one scenario after the other, or the example that is built in where none is named. */
abstract class ScenarioCommand extends StudyCommand {
    @Parameters(
            arity = "0..*",
            paramLabel = "FILE",
            description =
                    "The scenario; - is standard input (default: the example that is built in). Several are answered one "
                            + "after the other, in JSON one line for each.")
    private List<Path> files = new ArrayList<>();

    private final Map<Path, CheckedScenario> ahead = new HashMap<>();

    /** The scenario that is answered now; null is the example. */
    Path file;

    ScenarioCommand(Terminal terminal) {
        super(terminal);
    }

    /** Everything that was named, in this order. */
    List<Path> files() {
        return files;
    }

    /** Further files that this command writes: option and name, null if it is not wanted. */
    Map<String, String> moreFiles() {
        return Map.of();
    }

    /** Reads every scenario before the first is answered, so that a bad one stops all. */
    void readAhead() throws ScenarioException, WrongUse {
        for (Path each : files) {
            ahead.put(each, read(each));
        }
    }

    /** What to call the scenario in complaints. */
    String name() {
        return ScenarioInput.name(file);
    }

    CheckedScenario read() throws ScenarioException, WrongUse {
        CheckedScenario known = ahead.get(file);
        if (known == null) {
            return read(file);
        }
        outputs.checkInputs();
        return known;
    }
}
