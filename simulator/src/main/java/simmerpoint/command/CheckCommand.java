package simmerpoint.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import simmerpoint.answer.scenario.ScenarioAnswer;
import simmerpoint.report.TextReport;
import simmerpoint.report.Wrapping;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.units.UnitSystem;

/** Reads a scenario and says what was understood. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = "Read a scenario, say what was understood or all that is wrong with it, trace nothing.",
        sortOptions = false)
final class CheckCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(arity = "1", paramLabel = "FILE", description = "The scenario; - is standard input.")
    private Path file;

    @Option(
            names = "--units",
            paramLabel = "metric|inch",
            converter = Converters.Units.class,
            description = "Units of the answer (default: metric).")
    private UnitSystem units = UnitSystem.METRIC;

    @Mixin
    private ScenarioInput input;

    @Mixin
    private ShowOptions show;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try {
            String words = "reading " + ScenarioInput.name(file);
            return tell(WaitingLine.during(words, terminal, false, () -> input.read(file, terminal)));
        } catch (ScenarioException e) {
            e.sentences().forEach(sentence -> new Complaints(terminal).about(sentence, Complaints.WRONG));
            return Complaints.WRONG;
        }
    }

    private int tell(CheckedScenario read) {
        int width = show.columns(terminal);
        TextReport.lines(show.answer(read, units, ScenarioAnswer::brief, ScenarioAnswer::of), width, terminal.ascii())
                .forEach(terminal::say);
        for (String warning : read.warnings()) {
            Wrapping.lines("Note: " + warning, "", "  ", width).forEach(terminal::say);
        }
        String end = read.timeless()
                .map(e -> "Good for days and years; the sun shown is only the usual one. " + e.getMessage() + ".")
                .orElse(ScenarioInput.name(file) + " can be traced.");
        Wrapping.lines(end, "", "  ", width).forEach(terminal::say);
        return 0;
    }
}
