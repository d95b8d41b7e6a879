package simmerpoint.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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

    /** The scenario that is answered now; null is the example. */
    Path file;

    ScenarioCommand(Terminal terminal) {
        super(terminal);
    }

    /** Everything that was named, in this order. */
    List<Path> files() {
        return files;
    }

    /** Refuses what cannot be done for several scenarios. */
    void checkSeveral() throws WrongUse {
        outputs.checkSeveral();
    }

    /** What to call the scenario in complaints. */
    String name() {
        return ScenarioInput.name(file);
    }

    CheckedScenario read() throws ScenarioException, WrongUse {
        return read(file);
    }
}
