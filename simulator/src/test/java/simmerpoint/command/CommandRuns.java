package simmerpoint.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.study.trace.TraceStudy;

/** What every test of a command needs: a folder, the program run in memory, and what it said. */
abstract class CommandRuns {
    @TempDir
    Path folder;

    private ProgramRun last;

    /** Runs the program as a user would, with nobody watching its progress; its exit code. */
    int run(String... args) {
        return run(TraceStudy::run, false, args);
    }

    /** The same with another tracer behind the main command, and with or without someone who watches. */
    int run(Tracer tracer, boolean console, String... args) {
        last = ProgramRun.of(tracer, console, args);
        return last.code();
    }

    /** What the last run wrote to standard output. */
    String out() {
        return last.text();
    }

    /** The same as bytes. */
    byte[] bytes() {
        return last.out();
    }

    /** The same with every stretch of white space, line breaks too, as one space. */
    String said() {
        return out().replaceAll("\\s+", " ");
    }

    /** What the last run wrote to standard error. */
    String err() {
        return last.err();
    }

    /** The last run said one line, with these words, on standard error and nothing else. */
    void assertComplaint(String words) {
        assertTrue(err().startsWith("simmerpoint: ") && err().lines().count() == 1, err());
        assertTrue(err().contains(words), err());
        assertEquals("", out());
    }

    /** A file in the folder; its name. */
    String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }
}
