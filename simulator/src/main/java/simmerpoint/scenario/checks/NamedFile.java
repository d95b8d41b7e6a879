package simmerpoint.scenario.checks;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import simmerpoint.input.InputFileException;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.values.FileNames;
import simmerpoint.scenario.values.InputFiles;
import simmerpoint.scenario.values.ScenarioValues;

/** Reads the other files that a scenario names. */
final class NamedFile {
    private NamedFile() {}

    /** Makes of a file what the scenario needs. */
    interface Reader<T> {
        T read(Path file) throws InputFileException;
    }

    /** What the file named at a key holds; empty if it cannot be used, which {@code problems} are told. */
    static <T> Optional<T> read(ScenarioValues v, String key, Problems problems, Reader<T> reader) {
        try {
            Path file = InputFiles.reading(v.folder().resolve(v.text(key)));
            return read(v, key, problems, reader, file);
        } catch (InvalidPathException e) {
            problems.add(v.line(key), key, FileNames.refusal());
            return Optional.empty();
        }
    }

    private static <T> Optional<T> read(ScenarioValues v, String key, Problems problems, Reader<T> reader, Path file) {
        try {
            return Optional.of(reader.read(file));
        } catch (InputFileException e) {
            // A scenario from somebody else must not bring to light what stands in files elsewhere.
            problems.add(v.line(key), key, isWithin(v.folder(), file) ? e.getMessage() : e.withoutQuote());
            return Optional.empty();
        }
    }

    private static boolean isWithin(Path folder, Path file) {
        try {
            return file.toRealPath().startsWith(folder.toAbsolutePath().toRealPath());
        } catch (IOException e) {
            return false;
        }
    }
}
