package simmerpoint.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.units.UnitSystem;

/** What all commands that work on scenarios have in common: what to read, in which units to answer, how to wait. */
abstract class InputCommand implements Callable<Integer> {
    final Terminal terminal;

    @Mixin
    final ScenarioInput input = new ScenarioInput();

    @Option(
            names = "--units",
            paramLabel = "metric|inch",
            converter = Converters.Units.class,
            description = "Units of the answer (default: metric).")
    UnitSystem units = UnitSystem.METRIC;

    @Option(names = "--no-progress", description = "Show no progress.")
    private boolean noProgress;

    @Option(names = "--quiet", description = "Show neither progress nor notes.")
    private boolean quiet;

    InputCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Reads a scenario; null is the example that is built in. */
    CheckedScenario read(Path file) throws ScenarioException, WrongUse {
        return reading(file, () -> input.read(file, terminal));
    }

    /** Reads what hangs on a file; says how long it takes where that is long. */
    <T> T reading(Path file, WaitingLine.Work<T> read) throws ScenarioException {
        return WaitingLine.during("reading " + ScenarioInput.name(file), terminal, silent(), read);
    }

    private boolean silent() {
        return quiet || noProgress || !terminal.errIsConsole();
    }

    /** Tells what is odd in a scenario, unless asked to be quiet. */
    void tellOddities(CheckedScenario read) {
        tellNotes(read.warnings());
    }

    /** Tells notes, unless asked to be quiet. */
    void tellNotes(List<String> notes) {
        if (!quiet) {
            notes.forEach(note -> terminal.complain("simmerpoint: note: " + note));
        }
    }

    /** A line of progress that is silent where nobody would see it or wants it. */
    ProgressLine progress() {
        return new ProgressLine(terminal, silent());
    }

    /** Work that shows its progress. */
    interface Work<T> {
        T run(Progress progress) throws ScenarioException;
    }

    /** Works, showing progress; what cannot stand as asked is a mistake in the scenario called {@code name}. */
    <T> T study(String name, Work<T> work) throws WrongUse, ScenarioException {
        try (ProgressLine line = progress()) {
            return work.run(line);
        } catch (ImpossibleSetupException e) {
            throw new WrongUse(name + ": " + e.getMessage() + ".");
        }
    }
}
