package simmerpoint.command;

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
            int code = args.length == 0
                    ? traceExample()
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

    /** No arguments, nothing to parse: the first answer comes sooner without loading the parser. */
    private int traceExample() {
        try {
            return new TraceCommand(terminal, tracer).call();
        } catch (Exception e) {
            return complaints.aboutRun(e);
        }
    }
}
