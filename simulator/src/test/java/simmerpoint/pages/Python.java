package simmerpoint.pages;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** Runs a script in the system's own Python, which has the packages of the system. */
final class Python {
    private static final String PROGRAM = "/usr/bin/python3";

    private Python() {}

    /** What {@code script} prints of {@code file}; fails, saying what it {@code needs}, if it does not end well. */
    static String run(String script, Path file, Path folder, String needs) throws IOException, InterruptedException {
        Path program = Files.writeString(folder.resolve("read.py"), script);
        Path out = folder.resolve("out");
        Process process = new ProcessBuilder(List.of(PROGRAM, program.toString(), file.toString()))
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        boolean ended = process.waitFor(60, TimeUnit.SECONDS);
        process.destroyForcibly();
        String text = Files.readString(out, StandardCharsets.UTF_8).strip();
        assertTrue(ended && process.exitValue() == 0, "needs " + needs + ": " + text);
        return text;
    }
}
