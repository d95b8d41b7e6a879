package simmerpoint.command;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ExecutionException;
import picocli.CommandLine.IExecutionStrategy;
import picocli.CommandLine.ParseResult;

/** Runs a command once for every scenario named, after all of them were found good. */
final class EachFile implements IExecutionStrategy {
    private final Terminal terminal;

    EachFile(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public int execute(ParseResult parsed) {
        ParseResult named = parsed.hasSubcommand() ? parsed.subcommand() : parsed;
        CommandLine line = named.commandSpec().commandLine();
        boolean help = CommandLine.executeHelpRequest(parsed) != null;
        if (help || !(line.getCommand() instanceof ScenarioCommand command)) {
            return help ? 0 : new CommandLine.RunLast().execute(parsed);
        }
        try {
            return run(command);
        } catch (Exception e) {
            throw new ExecutionException(line, String.valueOf(e.getMessage()), e);
        }
    }

    private int run(ScenarioCommand command) throws Exception {
        List<Path> files = command.files();
        if (files.size() <= 1) {
            command.file = files.isEmpty() ? null : files.get(0);
            return command.call();
        }
        command.outputs.checkSeveral(command.moreFiles());
        for (Path file : files) {
            refuseStandardInput(file);
        }
        command.readAhead();
        for (Path file : files) {
            command.file = file;
            if (!command.outputs.takesStandardOutput()) {
                head(command.name(), file.equals(files.get(0)));
            }
            command.call();
        }
        command.outputs.writeLines();
        command.sayWritten();
        return 0;
    }

    private void head(String name, boolean first) {
        if (!first) {
            terminal.say("");
        }
        terminal.say(name + ":");
    }

    private static void refuseStandardInput(Path file) throws WrongUse {
        if (ScenarioInput.isStandardInput(file)) {
            throw new WrongUse("standard input (-) holds one scenario; name it alone, or name files.");
        }
    }
}
