package simmerpoint.viewer.document;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import simmerpoint.report.AtomicFile;
import simmerpoint.report.OutputException;

/**
 * Small text files for settings. A file that cannot be read is empty; errors of writing are ignored.
 */
public final class SettingsFile {
    private static final int MOST_LINES = 100;

    private SettingsFile() {}

    /** The lines of such a file that are not blank; none if it is not there or is no text. */
    public static List<String> lines(Path file) {
        try (Stream<String> lines = Files.lines(file, StandardCharsets.UTF_8)) {
            return lines.filter(line -> !line.isBlank()).limit(MOST_LINES).toList();
        } catch (IOException | UncheckedIOException e) {
            return List.of();
        }
    }

    /** Replaces such a file as a whole, in a folder that is made if need be. */
    public static void keep(Path file, List<String> lines) {
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(line).append('\n'));
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            AtomicFile.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
        } catch (IOException | OutputException e) {
            // Nothing is lost but a convenience of the next start.
            return;
        }
    }
}
