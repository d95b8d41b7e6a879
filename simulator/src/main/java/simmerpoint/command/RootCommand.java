package simmerpoint.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import simmerpoint.report.Version;

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
            "Exit code: 0 done, 2 wrong command line or scenario, 1 failure while running."
        })
final class RootCommand implements Runnable {
    @picocli.CommandLine.Spec
    private picocli.CommandLine.Model.CommandSpec spec;

    @Override
    public void run() {
        throw new picocli.CommandLine.ParameterException(
                spec.commandLine(),
                "a command is missing: trace, pan, day, compare, check, example, materials or completion");
    }

    /** Reads the version only when it is asked for. */
    static final class Versions implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"Simmerpoint " + Version.text()};
        }
    }
}
