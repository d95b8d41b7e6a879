package simmerpoint.scenario.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The commented scenario to start from. */
public final class ExampleScenario {
    private ExampleScenario() {}

    /** Its whole text, with a newline at the end. */
    public static String text() {
        try (InputStream stream = ExampleScenario.class.getResourceAsStream("example.yaml")) {
            if (stream == null) {
                throw new IllegalStateException("example.yaml is missing from the program");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
