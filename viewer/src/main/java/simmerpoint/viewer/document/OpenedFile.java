package simmerpoint.viewer.document;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;

/**
 * A scenario read from a file. Reading may take time and may be done on any thread.
 *
 * @param file its path; empty for an example or a text
 * @param read the scenario
 */
public record OpenedFile(Optional<Path> file, CheckedScenario read) {
    /** Reads a file. */
    public static OpenedFile read(Path file) throws ScenarioException {
        return new OpenedFile(Optional.of(file.toAbsolutePath().normalize()), ScenarioReader.read(file));
    }

    /** The example built into the program. */
    public static OpenedFile example() {
        return new OpenedFile(Optional.empty(), ScenarioReader.builtIn());
    }

    /** Reads a text that comes with the program; other files that it names are looked for in a folder. */
    static OpenedFile ofText(String name, String text, Path folder) throws ScenarioException {
        return new OpenedFile(Optional.empty(), ScenarioReader.parse(name, text, folder));
    }

    static Path folderOf(Path file) {
        Path parent = file.toAbsolutePath().normalize().getParent();
        return parent == null ? Path.of("") : parent;
    }

    /** Whether a file holds something else than that text; a file that is not there does not. */
    static boolean holdsOther(Path file, String text) {
        try {
            return Files.exists(file)
                    && !Arrays.equals(Files.readAllBytes(file), text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            return true;
        }
    }
}
