package simmerpoint.command;

import java.nio.file.Path;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import simmerpoint.answer.Answer;
import simmerpoint.report.TextReport;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;

/** A command that answers in words: what to write besides, how wide to show the answer. */
abstract class AnswerCommand extends InputCommand {
    @Mixin
    final OutputOptions outputs = new OutputOptions();

    @Mixin
    final ShowOptions show = new ShowOptions();

    AnswerCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    CheckedScenario read(Path file) throws ScenarioException, WrongUse {
        CheckedScenario read = super.read(file);
        outputs.checkInputs();
        return read;
    }

    /** Says one more line, where nothing but people reads it. */
    void tellBeside(String line) {
        if (outputs.takesStandardOutput()) {
            terminal.complain(line);
        } else {
            terminal.say(line);
        }
    }

    /** Whether the short answer is all that is wanted, so that what only the whole one tells need not be worked out. */
    boolean isBrief() {
        return !show.full() && !outputs.any();
    }

    /** Says what is found, in short or in full, unless a file takes standard output. */
    <R> void say(R found, ShowOptions.Words<R> brief, ShowOptions.Words<R> whole) {
        say(() -> show.answer(found, units, brief, whole));
    }

    /** Says the answer, unless a file takes standard output. */
    void say(Supplier<Answer> answer) {
        if (!outputs.takesStandardOutput()) {
            TextReport.lines(answer.get(), show.columns(terminal), terminal.ascii())
                    .forEach(terminal::say);
        }
        sayWritten();
    }

    /** Says which files are written. */
    void sayWritten() {
        outputs.written().forEach(file -> tellBeside(file + " is written."));
    }
}
