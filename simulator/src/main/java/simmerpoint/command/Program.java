package simmerpoint.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Runs a command line and turns whatever happens into an exit code. */
final class Program {
    private final Terminal terminal;
    private final Tracer tracer;
    private final Complaints complaints;

    Program(Terminal terminal, Tracer tracer) {
        this.terminal = terminal;
        this.tracer = tracer;
        this.complaints = new Complaints(terminal);
    }

    /** Runs the command line and returns the exit code: 0, 1 or 2. */
    int run(String... args) {
        try {
            int code = isPlainTrace(args)
                    ? trace(args)
                    : CommandLines.of(terminal, tracer, complaints).execute(args);
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

    /** Whether nothing but a file to trace is named: the first answer comes a quarter sooner without loading the parser. */
    private static boolean isPlainTrace(String... args) {
        boolean trace = args.length == 0 || args[0].equals("trace");
        return trace && (args.length < 2 || (args.length == 2 && isPlainFile(args[1])));
    }

    private static boolean isPlainFile(String name) {
        return !name.isEmpty() && !name.startsWith("-") && name.indexOf('\0') < 0;
    }

    private int trace(String... args) {
        try {
            TraceCommand command = new TraceCommand(terminal, tracer);
            command.file = args.length == 2 ? Path.of(args[1]) : null;
            return command.call();
        } catch (InvalidPathException e) {
            return CommandLines.of(terminal, tracer, complaints).execute(args);
        } catch (Exception e) {
            return complaints.aboutRun(e);
        }
    }
}
