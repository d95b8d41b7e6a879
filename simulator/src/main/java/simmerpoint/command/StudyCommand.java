package simmerpoint.command;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import simmerpoint.answer.Answer;
import simmerpoint.report.TextReport;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.units.UnitSystem;

/** What all commands that trace have in common: how many rays, how to show the answer, what to write, how to wait. */
abstract class StudyCommand implements Callable<Integer> {
    final Terminal terminal;

    @Mixin
    final RayOptions rays = new RayOptions();

    @Option(
            names = "--units",
            paramLabel = "metric|inch",
            converter = Converters.Units.class,
            description = "Units of the answer (default: metric).")
    UnitSystem units = UnitSystem.METRIC;

    @Mixin
    final OutputOptions outputs = new OutputOptions();

    @Mixin
    private final ShowOptions show = new ShowOptions();

    @Option(names = "--no-progress", description = "Show no progress.")
    private boolean noProgress;

    @Option(names = "--quiet", description = "Show neither progress nor notes.")
    private boolean quiet;

    StudyCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Tells what is odd in a scenario, unless asked to be quiet. */
    void tellOddities(ReadScenario read) {
        tellNotes(read.warnings());
    }

    /** Tells notes, unless asked to be quiet. */
    void tellNotes(List<String> notes) {
        if (!quiet) {
            notes.forEach(warning -> terminal.complain("simmerpoint: note: " + warning));
        }
    }

    /** A line of progress that is silent where nobody would see it or wants it. */
    ProgressLine progress() {
        return new ProgressLine(terminal, quiet || noProgress || !terminal.errIsConsole());
    }

    /** Says the answer, unless a file takes standard output. */
    void say(Answer answer) {
        if (!outputs.takesStandardOutput()) {
            TextReport.lines(answer, show.columns(terminal), terminal.ascii()).forEach(terminal::say);
        }
    }
}
