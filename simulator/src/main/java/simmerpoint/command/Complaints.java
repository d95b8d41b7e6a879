package simmerpoint.command;

import java.util.concurrent.CancellationException;
import simmerpoint.input.InputFileException;
import simmerpoint.quantities.OneLine;
import simmerpoint.report.OutputException;
import simmerpoint.scenario.ScenarioException;

/** The one place where failures become one line on standard error and an exit code. */
final class Complaints {
    static final int FAILURE = 1;
    static final int WRONG = 2;

    private final Terminal terminal;

    Complaints(Terminal terminal) {
        this.terminal = terminal;
    }

    /** One line about what went wrong. */
    int about(String message, int code) {
        terminal.complain("simmerpoint: " + OneLine.of(message));
        return code;
    }

    /** Where else something is wrong with a scenario, in a word. */
    private static String more(int problems) {
        return problems == 0
                ? ""
                : " (and " + problems + (problems == 1 ? " problem more" : " problems more")
                        + "; simmerpoint check tells all)";
    }

    /** About a command that failed. */
    int aboutRun(Exception e) {
        if (e instanceof ScenarioException wrong) {
            return about(e.getMessage() + more(wrong.problems().size() - 1), WRONG);
        }
        if (e instanceof WrongUse || e instanceof InputFileException) {
            return about(e.getMessage(), WRONG);
        }
        if (e instanceof OutputException) {
            return about(e.getMessage(), FAILURE);
        }
        if (e instanceof CancellationException) {
            return about("stopped; nothing was written.", FAILURE);
        }
        if (Boolean.getBoolean("simmerpoint.debug")) {
            e.printStackTrace(terminal.err());
        }
        return about(
                "something went wrong inside the program (" + e.getClass().getSimpleName() + ": " + e.getMessage()
                        + "); please report it with the scenario.",
                FAILURE);
    }
}
