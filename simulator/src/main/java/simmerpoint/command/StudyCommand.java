package simmerpoint.command;

import picocli.CommandLine.Mixin;

/** A command that traces and answers in words: how many rays. */
abstract class StudyCommand extends AnswerCommand {
    @Mixin
    final RayOptions rays = new RayOptions();

    StudyCommand(Terminal terminal) {
        super(terminal);
    }
}
