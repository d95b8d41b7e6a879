package simmerpoint.command;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import simmerpoint.quantities.Version;

/** The program itself: says what there is. */
@Command(
        name = "simmerpoint",
        mixinStandardHelpOptions = true,
        versionProvider = RootCommand.Versions.class,
        description = {"What a hand-built parabolic solar cooker will do before it is built."},
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        footer = {
            "",
            "Without a command it traces the example that is built in.",
            "simmerpoint COMMAND --help tells more.",
            "Exit code: 0 done, 2 wrong command line or scenario, 1 failure while running,",
            "130 or 143 stopped from outside (interrupted, or asked to end)."
        })
final class RootCommand implements Runnable {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(), missing(spec.commandLine()));
    }

    /** Says which commands there are. */
    static String missing(CommandLine line) {
        List<String> names = line.getSubcommands().keySet().stream()
                .filter(name -> !name.equals("help"))
                .toList();
        int last = names.size() - 1;
        return "a command is missing: " + String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }

    /** Reads the version only when it is asked for. */
    static final class Versions implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"Simmerpoint " + Version.text()};
        }
    }
}
