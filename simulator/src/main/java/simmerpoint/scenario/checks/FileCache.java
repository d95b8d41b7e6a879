package simmerpoint.scenario.checks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import simmerpoint.input.InputFileException;

/**
 * Reads files of one sort and remembers the last one, so that whoever reads a scenario again and again while its other keys change
 * gets the very same content at once. A file that was changed since is read anew.
 *
 * @param <T> what is made of a file
 */
final class FileCache<T> {
    private Entry lastFile;
    private T last;

    /** Of which file, and how it was read: metres per unit. */
    private record Entry(Path file, FileTime changed, long bytes, double metresPerUnit) {}

    /** Makes something of a file. */
    interface Reader<T> {
        T read(Path file, double metresPerUnit) throws InputFileException;
    }

    /** What {@code reader} makes of a file whose numbers are so many metres each. */
    synchronized T read(Path file, double metresPerUnit, Reader<T> reader) throws InputFileException {
        Entry asked = entry(file, metresPerUnit);
        if (asked == null || !asked.equals(lastFile)) {
            T found = reader.read(file, metresPerUnit);
            // As it was before it was read: a change meanwhile is seen the next time.
            lastFile = asked;
            last = found;
        }
        return last;
    }

    /** What the file is like now; null if that cannot be told. */
    private static Entry entry(Path file, double metresPerUnit) {
        try {
            return new Entry(
                    file.toAbsolutePath().normalize(),
                    Files.getLastModifiedTime(file),
                    Files.size(file),
                    metresPerUnit);
        } catch (IOException e) {
            return null;
        }
    }
}
