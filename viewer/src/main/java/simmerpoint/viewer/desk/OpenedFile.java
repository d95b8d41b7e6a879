package simmerpoint.viewer.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.ScenarioReader;

/**
 * A scenario as it was read. Reading may take time and may be done on any thread.
 *
 * @param name what to call it in messages
 * @param file where it stands; empty for an example or a bare text
 * @param folder where other files that it names are looked for
 * @param read what it says
 */
public record OpenedFile(String name, Optional<Path> file, Path folder, ReadScenario read) {
    /** Reads a file. */
    public static OpenedFile read(Path file) throws ScenarioException {
        return new OpenedFile(
                file.toString(),
                Optional.of(file.toAbsolutePath().normalize()),
                folderOf(file),
                ScenarioReader.read(file));
    }

    /** Reads a text that stands in no file. */
    public static OpenedFile text(String name, String text, Path folder) throws ScenarioException {
        return new OpenedFile(name, Optional.empty(), folder, ScenarioReader.parse(name, text, folder));
    }

    /** The example built into the program. */
    public static OpenedFile example() {
        return new OpenedFile("the built-in example", Optional.empty(), Path.of(""), ScenarioReader.builtIn());
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
