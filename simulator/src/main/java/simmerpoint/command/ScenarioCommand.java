package simmerpoint.command;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;

/** A command that answers one scenario, or the example that is built in where none is named. */
abstract class ScenarioCommand extends StudyCommand {
    @Parameters(
            arity = "0..1",
            paramLabel = "FILE",
            description = "The scenario; - is standard input (default: the example that is built in).")
    Path file;

    ScenarioCommand(Terminal terminal) {
        super(terminal);
    }

    /** What to call the scenario in complaints. */
    String name() {
        return ScenarioInput.name(file);
    }

    CheckedScenario read() throws ScenarioException, WrongUse {
        return read(file);
    }
}
