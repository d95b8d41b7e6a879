package simmerpoint.command;

import java.nio.file.Path;
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
    private final ShowOptions show = new ShowOptions();

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

    /** Says the answer, unless a file takes standard output. */
    void say(Answer answer) {
        if (!outputs.takesStandardOutput()) {
            TextReport.lines(answer, show.columns(terminal), terminal.ascii()).forEach(terminal::say);
        }
    }
}
