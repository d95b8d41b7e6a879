package simmerpoint.command;

<<<<<<< HEAD
import java.util.List;
import java.util.concurrent.Callable;
=======
>>>>>>> w-report
import picocli.CommandLine.Mixin;
import simmerpoint.answer.Answer;
import simmerpoint.report.TextReport;

/** A command that traces and answers in words: what to write besides, how wide to show the answer. */
abstract class StudyCommand extends RayCommand {
    @Mixin
    final OutputOptions outputs = new OutputOptions();

    @Mixin
    private final ShowOptions show = new ShowOptions();

    StudyCommand(Terminal terminal) {
<<<<<<< HEAD
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
=======
        super(terminal);
>>>>>>> w-report
    }

    /** Says the answer, unless a file takes standard output. */
    void say(Answer answer) {
        if (!outputs.takesStandardOutput()) {
            TextReport.lines(answer, show.columns(terminal), terminal.ascii()).forEach(terminal::say);
        }
    }
}
