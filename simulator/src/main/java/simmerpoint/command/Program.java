package simmerpoint.command;

import java.io.PrintWriter;
import java.nio.charset.Charset;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** The commands put together, and what becomes of their failures. */
final class Program {
    private final Terminal terminal;
    private final Tracer tracer;

    Program(Terminal terminal, Tracer tracer) {
        this.terminal = terminal;
        this.tracer = tracer;
    }

    /** Runs the command line and returns the exit code: 0, 1 or 2. */
    int run(String... args) {
        Complaints complaints = new Complaints(terminal);
        try {
            int code = commandLine(complaints).execute(args.length == 0 ? new String[] {"trace"} : args);
            terminal.err().flush();
            terminal.out().flush();
            // Whoever reads through a pipe may have seen enough: that is no failure.
            if (terminal.out().checkError() && code == 0 && !Terminal.outIsPipe()) {
                return complaints.about("the answer could not be written to standard output.", Complaints.FAILURE);
            }
            return code;
        } catch (OutOfMemoryError e) {
            return complaints.about("there is not enough memory for this; close other programs.", Complaints.FAILURE);
        }
    }

    private CommandLine commandLine(Complaints complaints) {
        CommandLine line = new CommandLine(new RootCommand());
        line.addSubcommand(new TraceCommand(terminal, tracer));
        line.addSubcommand(new CheckCommand(terminal));
        line.addSubcommand(new ExampleCommand(terminal));
        line.addSubcommand(new MaterialsCommand(terminal));
        line.addSubcommand(new CompletionCommand(terminal));
        line.addSubcommand(new CommandLine.HelpCommand());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setExpandAtFiles(false);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setOut(writer(terminal.out()));
        line.setErr(writer(terminal.err()));
        line.setParameterExceptionHandler(complaints::aboutArguments);
        line.setExecutionExceptionHandler((e, command, parsed) -> complaints.aboutRun(e));
        return line;
    }

    private static PrintWriter writer(java.io.PrintStream stream) {
        return new PrintWriter(stream, true, Charset.defaultCharset());
    }
}
