package simmerpoint.report;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import simmerpoint.scenario.values.InputFiles;

/**
 * Writes files whole or not at all: into a temporary file in the same folder, which then takes the place of the old file
 * in one step. Whoever reads meanwhile sees the old file or the new one. A temporary file left by a stopped program is
 * taken away as the Java machine ends.
 */
public final class AtomicFile {
    private static final Set<Path> UNFINISHED = ConcurrentHashMap.newKeySet();
    private static final int BUFFER = 1 << 16;
    private static final int MOST_TRIES = 100;
    private static final int MOST_LINKS = 40;
    private static final Pattern TEMPORARY = Pattern.compile("\\.simmerpoint-(\\d+)-\\d+\\.tmp");

    /** Nothing takes longer to write; a younger file may be that of a program on another machine. */
    private static final Duration OLD = Duration.ofMinutes(10);

    static {
        Runtime.getRuntime().addShutdownHook(new Thread(AtomicFile::sweep, "unfinished files"));
    }

    private AtomicFile() {}

    private static void sweep() {
        UNFINISHED.forEach(AtomicFile::delete);
    }

    /**
     * Says in one sentence why {@code file} cannot be written, before any work is done for it; does nothing if it can.
     */
    public static void check(Path file) throws OutputException {
        Path folder = folder(destination(file));
        if (!Files.exists(folder)) {
            throw new OutputException(
                    file + " cannot be written: there is no folder " + folder + "; make it first.", null);
        }
        if (!Files.isDirectory(folder)) {
            throw new OutputException(file + " cannot be written: " + folder + " is not a folder.", null);
        }
        if (Files.isDirectory(file)) {
            throw new OutputException(file + " cannot be written: it is a folder.", null);
        }
        if (InputFiles.contains(file)) {
            throw new OutputException(
                    file + " belongs to the scenario and is read by it; give the result another name.", null);
        }
        boolean writable = Files.exists(file) ? Files.isWritable(file) : Files.isWritable(folder);
        if (!writable || (isPlain(file) && !Files.isWritable(folder))) {
            throw new OutputException(file + " cannot be written: no permission to write there.", null);
        }
    }

    /**
     * Where a name leads in the end: links are followed, also to a file that is not there yet. A name that leads nowhere,
     * or round in a circle, stays.
     */
    public static Path destination(Path file) {
        Path at = file.toAbsolutePath();
        try {
            for (int k = 0; k < MOST_LINKS && Files.isSymbolicLink(at); k++) {
                at = at.resolveSibling(Files.readSymbolicLink(at));
            }
            Path parent = at.normalize().getParent();
            return parent == null || at.getFileName() == null
                    ? at
                    : parent.toRealPath().resolve(at.getFileName());
        } catch (IOException e) {
            return at;
        }
    }

    private static Path folder(Path file) {
        Path parent = file.toAbsolutePath().normalize().getParent();
        return parent == null ? file.toAbsolutePath() : parent;
    }

    /** Devices and pipes are written straight; everything else is replaced. */
    private static boolean isPlain(Path file) {
        return !Files.exists(file) || Files.isRegularFile(file);
    }

    /** What goes into a file, piece by piece. */
    public interface Content {
        /** Writes all of it. */
        void writeTo(OutputStream out) throws IOException;
    }

    /** Puts {@code bytes} into {@code file}, which is made or replaced. */
    public static void write(Path file, byte[] bytes) throws OutputException {
        write(file, out -> out.write(bytes));
    }

    /** Puts {@code content} into {@code file}, which is made or replaced once all of it is there. */
    public static void write(Path file, Content content) throws OutputException {
        check(file);
        try {
            if (isPlain(file)) {
                replace(destination(file), content);
            } else {
                try (OutputStream out = Files.newOutputStream(file, StandardOpenOption.WRITE)) {
                    content.writeTo(out);
                }
            }
        } catch (AccessDeniedException e) {
            throw new OutputException(file + " cannot be written: no permission to write there.", e);
        } catch (IOException e) {
            throw new OutputException(file + " could not be written: " + e.getMessage() + ".", e);
        }
    }

    private static void replace(Path file, Content content) throws IOException {
        Path temporary = null;
        try {
            temporary = create(file);
            fill(temporary, content);
            keepRights(file, temporary);
            Files.move(temporary, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            if (temporary != null) {
                delete(temporary);
                UNFINISHED.remove(temporary);
            }
        }
        clearAbandoned(folder(file));
    }

    /** A file that is replaced keeps who may read, write and run it. */
    private static void keepRights(Path old, Path replacement) throws IOException {
        if (Files.exists(old) && Files.getFileAttributeView(old, PosixFileAttributeView.class) != null) {
            Files.setPosixFilePermissions(replacement, Files.getPosixFilePermissions(old));
        }
    }

    /** Takes away temporary files of programs that were killed while they wrote. */
    private static void clearAbandoned(Path folder) {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, ".simmerpoint-*.tmp")) {
            for (Path each : files) {
                if (isAbandoned(each)) {
                    delete(each);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // They are in nobody's way; the file that was asked for is written.
            return;
        }
    }

    private static boolean isAbandoned(Path file) throws IOException {
        Matcher name = TEMPORARY.matcher(file.getFileName().toString());
        return name.matches()
                && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty()
                && Files.getLastModifiedTime(file)
                        .toInstant()
                        .isBefore(Instant.now().minus(OLD));
    }

    /** A new file beside {@code file}, with the permissions that any new file gets. */
    private static Path create(Path file) throws IOException {
        for (int k = 0; ; k++) {
            String name = ".simmerpoint-" + ProcessHandle.current().pid() + "-" + System.nanoTime() + ".tmp";
            Path temporary = folder(file).resolve(name);
            UNFINISHED.add(temporary);
            try {
                return Files.createFile(temporary);
            } catch (FileAlreadyExistsException e) {
                UNFINISHED.remove(temporary);
                if (k == MOST_TRIES) {
                    throw e;
                }
            } catch (IOException e) {
                UNFINISHED.remove(temporary);
                throw e;
            }
        }
    }

    private static void fill(Path temporary, Content content) throws IOException {
        try (FileChannel channel = FileChannel.open(temporary, StandardOpenOption.WRITE)) {
            OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), BUFFER);
            content.writeTo(out);
            out.flush();
            channel.force(true);
        }
    }

    private static void delete(Path temporary) {
        try {
            Files.deleteIfExists(temporary);
        } catch (IOException e) {
            // Nothing better can be done for a temporary file.
            UNFINISHED.remove(temporary);
        }
    }
}
