package simmerpoint.scenario.values;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The files beside scenarios that this program has read: meshes and sun tables. Nobody can make them anew, so no result is
 * written over them. One list for the whole program, since a file may be read here and written there.
 */
public final class InputFiles {
    private static final Set<Path> READ = ConcurrentHashMap.newKeySet();

    private InputFiles() {}

    /** Remembers a file that is about to be read. */
    public static Path reading(Path file) {
        READ.add(file.toAbsolutePath().normalize());
        return file;
    }

    /** Whether that is one of them, under whatever name. */
    public static boolean contains(Path file) {
        return READ.stream().anyMatch(read -> same(read, file));
    }

    private static boolean same(Path read, Path file) {
        try {
            return read.equals(file.toAbsolutePath().normalize())
                    || (Files.exists(file) && Files.exists(read) && Files.isSameFile(read, file));
        } catch (IOException e) {
            return false;
        }
    }
}
