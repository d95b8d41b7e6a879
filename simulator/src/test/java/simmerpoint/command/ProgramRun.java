package simmerpoint.command;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import simmerpoint.study.trace.TraceStudy;

/**
 * One run of the program in memory, as a user would start it.
 *
 * @param code exit code
 * @param out what it wrote to standard output
 * @param err what it wrote to standard error
 */
public record ProgramRun(int code, byte[] out, String err) {
    /** Runs the program with nobody watching its progress. */
    public static ProgramRun of(String... args) {
        return of(TraceStudy::run, false, args);
    }

    /** The same with something to read on standard input. */
    static ProgramRun reading(String input, String... args) {
        return of(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), TraceStudy::run, false, args);
    }

    /** The same with another tracer behind the main command, and with or without someone who watches. */
    static ProgramRun of(Tracer tracer, boolean console, String... args) {
        return of(InputStream.nullInputStream(), tracer, console, args);
    }

    private static ProgramRun of(InputStream in, Tracer tracer, boolean console, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream o = new PrintStream(out, true, StandardCharsets.UTF_8);
        PrintStream e = new PrintStream(err, true, StandardCharsets.UTF_8);
        int code = new Program(new Terminal(in, o, e, console, false, 0), tracer).run(args);
        return new ProgramRun(code, out.toByteArray(), err.toString(StandardCharsets.UTF_8));
    }

    /** Standard output as text. */
    public String text() {
        return new String(out, StandardCharsets.UTF_8);
    }
}
