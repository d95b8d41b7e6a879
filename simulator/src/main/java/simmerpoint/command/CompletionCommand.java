package simmerpoint.command;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints a script that teaches bash or zsh the commands and options. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description =
                "Print a script that completes commands and options in bash and zsh: source <(simmerpoint completion)")
final class CompletionCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    CompletionCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        terminal.out().print(AutoComplete.bash("simmerpoint", spec.root().commandLine()));
        terminal.out().print('\n');
        return 0;
    }
}
