package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
    @TempDir
    Path folder;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private long files() throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.count();
        }
    }

    @Test
    void makesAndReplacesAndLeavesNothingElse() throws IOException, OutputException {
        Path file = folder.resolve("a.txt");
        AtomicFile.write(file, bytes("one"));
        AtomicFile.write(file, bytes("two"));
        assertEquals("two", Files.readString(file));
        assertEquals(1, files());
    }

    @Test
    void aMissingFolderIsNamed() {
        Path file = folder.resolve("none").resolve("a.txt");
        OutputException e = assertThrows(OutputException.class, () -> AtomicFile.write(file, bytes("x")));
        assertTrue(e.getMessage().contains("there is no folder " + folder.resolve("none")), e.getMessage());
        assertFalse(Files.exists(folder.resolve("none")));
    }

    @Test
    void aFolderIsNoFile() throws IOException {
        OutputException e = assertThrows(OutputException.class, () -> AtomicFile.write(folder, bytes("x")));
        assertTrue(e.getMessage().contains("it is a folder"), e.getMessage());
        Path file = Files.writeString(folder.resolve("a"), "old");
        assertThrows(OutputException.class, () -> AtomicFile.write(file.resolve("b"), bytes("x")));
        assertEquals("old", Files.readString(file));
    }

    /** A link goes on leading to its file, which is what changes. */
    @Test
    void linksAreFollowed() throws IOException, OutputException {
        Path file = Files.writeString(folder.resolve("real"), "old");
        Path link = folder.resolve("link");
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Files.createSymbolicLink(link, file);
        AtomicFile.write(link, bytes("new"));
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("new", Files.readString(file));
    }

    @Test
    void newFilesGetTheUsualPermissions() throws IOException, OutputException {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Path usual = Files.writeString(folder.resolve("usual"), "x");
        Path file = folder.resolve("ours");
        AtomicFile.write(file, bytes("x"));
        assertEquals(Files.getPosixFilePermissions(usual), Files.getPosixFilePermissions(file));
    }

    @Test
    void aReplacedFileKeepsItsRights() throws IOException, OutputException {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Path file = Files.writeString(folder.resolve("mine"), "old");
        Set<PosixFilePermission> rights = PosixFilePermissions.fromString("rwx-w--w-");
        Files.setPosixFilePermissions(file, rights);
        AtomicFile.write(file, bytes("new"));
        assertEquals(rights, Files.getPosixFilePermissions(file));
    }

    /** A link to a file that is not there yet makes that file, and stays a link. */
    @Test
    void linksToNewFilesAreFollowed() throws IOException, OutputException {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("later"));
        AtomicFile.write(link, bytes("new"));
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("new", Files.readString(folder.resolve("later")));
        assertEquals(AtomicFile.destination(link), AtomicFile.destination(folder.resolve("later")));
    }

    @Test
    void whatAKilledProgramLeftIsTakenAway() throws IOException, OutputException, InterruptedException {
        Process ended = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version")
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        ended.waitFor();
        Path left = Files.writeString(folder.resolve(".simmerpoint-" + ended.pid() + "-7.tmp"), "half");
        Path running = Files.writeString(
                folder.resolve(".simmerpoint-" + ProcessHandle.current().pid() + "-7.tmp"), "half");
        FileTime old = FileTime.from(Instant.now().minus(Duration.ofHours(1)));
        Files.setLastModifiedTime(left, old);
        Files.setLastModifiedTime(running, old);
        AtomicFile.write(folder.resolve("a"), bytes("x"));
        assertFalse(Files.exists(left));
        assertTrue(Files.exists(running));
    }
}
