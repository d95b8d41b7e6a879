package simmerpoint.command;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** The commands put together. */
final class CommandLines {
    private CommandLines() {}

    static CommandLine of(Terminal terminal, Tracer tracer, Complaints complaints) {
        CommandLine line = new CommandLine(new RootCommand());
        line.addSubcommand(new TraceCommand(terminal, tracer));
        line.addSubcommand(new PanCommand(terminal));
        line.addSubcommand(new DayCommand(terminal));
        line.addSubcommand(new AimCommand(terminal));
        line.addSubcommand(new BudgetCommand(terminal));
        line.addSubcommand(new PanelsCommand(terminal));
        line.addSubcommand(new CompareCommand(terminal));
        line.addSubcommand(new DesignCommand(terminal));
        line.addSubcommand(new CutCommand(terminal));
        line.addSubcommand(new SafetyCommand(terminal));
        line.addSubcommand(new TrialCommand(terminal));
        line.addSubcommand(new ReportCommand(terminal));
        line.addSubcommand(new CheckCommand(terminal));
        line.addSubcommand(new ExampleCommand(terminal));
        line.addSubcommand(new MaterialsCommand(terminal));
        line.addSubcommand(new SchemaCommand(terminal));
        line.addSubcommand(new CompletionCommand(terminal));
        line.addSubcommand(new CommandLine.HelpCommand());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setExpandAtFiles(false);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setOut(writer(terminal.out()));
        line.setErr(writer(terminal.err()));
        line.setExecutionStrategy(new EachFile(terminal));
        line.setParameterExceptionHandler(new ArgumentComplaints(complaints)::about);
        line.setExecutionExceptionHandler((e, command, parsed) -> complaints.aboutRun(e));
        return line;
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, true, Charset.defaultCharset());
    }
}
