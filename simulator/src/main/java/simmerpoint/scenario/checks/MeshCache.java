package simmerpoint.scenario.checks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mesh.ObjReader;
import simmerpoint.input.InputFileException;

/**
 * Reads mesh files and remembers the last one, so that whoever reads a scenario again and again while its other keys change
 * gets the very same mesh at once. A file that was changed since is read anew.
 */
final class MeshCache {
    private static Entry last;

    private MeshCache() {}

    private record Entry(Path file, FileTime changed, long bytes, double metresPerUnit, Mesh mesh) {}

    /** The mesh in a file whose numbers are so many metres each. */
    static synchronized Mesh read(Path file, double metresPerUnit) throws InputFileException {
        Entry asked = entry(file, metresPerUnit);
        boolean same = asked != null
                && last != null
                && asked.equals(new Entry(last.file, last.changed, last.bytes, last.metresPerUnit, null));
        if (!same) {
            Mesh mesh = ObjReader.read(file, metresPerUnit);
            // As it was before it was read: a change meanwhile is seen the next time.
            last = asked == null ? null : new Entry(asked.file, asked.changed, asked.bytes, metresPerUnit, mesh);
            return mesh;
        }
        return last.mesh;
    }

    /** What the file is like now; null if that cannot be told. */
    private static Entry entry(Path file, double metresPerUnit) {
        try {
            return new Entry(
                    file.toAbsolutePath().normalize(),
                    Files.getLastModifiedTime(file),
                    Files.size(file),
                    metresPerUnit,
                    null);
        } catch (IOException e) {
            return null;
        }
    }
}
