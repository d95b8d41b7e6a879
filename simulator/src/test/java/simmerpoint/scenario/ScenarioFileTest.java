package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.scenario.file.ScenarioReader;

/** Files that cannot be read, and files that can although they look odd. */
class ScenarioFileTest {
    @TempDir
    Path folder;

    private String refusal(Path file) {
        ScenarioException e = assertThrows(ScenarioException.class, () -> ScenarioReader.read(file));
        assertTrue(e.getMessage().startsWith(file.toString()), e.getMessage());
        assertTrue(!e.getMessage().contains("Exception"), e.getMessage());
        return e.getMessage();
    }

    @Test
    void aGigabyteIsRefusedAtOnce() throws IOException {
        Path file = folder.resolve("huge.yaml");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(1L << 30);
        }
        assertTimeoutPreemptively(Duration.ofSeconds(1), () -> {
            String message = refusal(file);
            assertTrue(message.contains("1073.7 MB; a scenario is a few kilobytes"), message);
        });
    }

    @Test
    void justOverOneMegabyteIsRefusedAndJustUnderIsRead() throws Exception {
        String comment = "#" + "x".repeat(98) + "\n";
        String padded = BadInput.GOOD + comment.repeat((1_000_000 - BadInput.GOOD.length() - 10) / 100);
        Path file = folder.resolve("long.yaml");
        Files.writeString(file, padded);
        assertEquals("test", ScenarioReader.read(file).scenario().title());
        Files.writeString(file, padded + comment.repeat(2));
        assertTrue(refusal(file).contains("over 1 MB are not read"));
    }

    @Test
    void missingFilesAndFoldersAreRefused() {
        assertTrue(refusal(folder.resolve("none.yaml")).endsWith("there is no such file"));
        assertTrue(refusal(folder).contains("this is a folder; a scenario file is needed"));
    }

    @Test
    void otherEncodingsAreRefusedWithTheirLine() throws IOException {
        Path file = folder.resolve("latin.yaml");
        Files.write(file, BadInput.GOOD.getBytes(StandardCharsets.ISO_8859_1));
        String message = refusal(file);
        assertTrue(message.contains(", line 11: this is not UTF-8 text"), message);
        Files.write(file, BadInput.GOOD.getBytes(StandardCharsets.UTF_16));
        assertTrue(refusal(file).contains("line 1: this is not UTF-8 text"));
        Files.write(file, (BadInput.GOOD + "# °").getBytes(StandardCharsets.UTF_8));
        byte[] cut = Files.readAllBytes(file);
        Files.write(file, java.util.Arrays.copyOf(cut, cut.length - 1));
        assertTrue(refusal(file).contains("line 17: this is not UTF-8 text"));
    }

    @Test
    void byteOrderMarksAndForeignLineEndsAreRead() throws Exception {
        Path file = folder.resolve("windows.yaml");
        Files.writeString(file, "\uFEFF" + BadInput.GOOD.replace("\n", "\r\n"));
        assertEquals(1.2, ScenarioReader.read(file).scenario().dish().diameterMetres());
        Files.writeString(
                file, "\uFEFF" + BadInput.with("hub: 60 mm", "hub: 1.3 m").replace("\n", "\r\n"));
        assertTrue(refusal(file).contains(", line 5, dish.hub: "));
    }

    @Test
    void meshesAreLookedForInTheScenariosFolder() throws Exception {
        Path file = folder.resolve("mesh.yaml");
        Files.writeString(file, meshScenario("mm", "0.96 m"));
        String missing = refusal(file);
        assertTrue(missing.contains(", line 4, dish.surface.file: ") && missing.contains("triangle-dish.obj"), missing);
        Files.copy(Path.of("../scenarios/triangle-dish.obj"), folder.resolve("triangle-dish.obj"));
        assertEquals(0.96, ScenarioReader.read(file).scenario().dish().diameterMetres());
    }

    @Test
    void aMeshInAnotherUnitThanSaidIsNoticed() throws Exception {
        Files.copy(Path.of("../scenarios/triangle-dish.obj"), folder.resolve("triangle-dish.obj"));
        Path file = folder.resolve("mesh.yaml");
        Files.writeString(file, meshScenario("cm", "0.96 m"));
        String message = refusal(file);
        assertTrue(message.contains(", line 4, dish.surface.unit: with numbers in cm the mesh reaches 4.8 m"), message);
        Files.writeString(file, meshScenario("mm", "2.6 m"));
        assertTrue(refusal(file).contains("check unit and diameter"));
        Files.writeString(file, meshScenario("mm", "0.96 m").replace("  diameter", "  gap: 1 mm\n  diameter"));
        assertTrue(refusal(file).contains("dish.gap: the gaps of a mesh are drawn in its file"));
        Files.writeString(file, meshScenario("mm", "0.96 m").replace("  diameter", "  hub: 1 mm\n  diameter"));
        assertTrue(refusal(file).contains("dish.hub: the mesh itself says"));
    }

    private static String meshScenario(String unit, String diameter) {
        return "dish:\n  diameter: " + diameter + "\n  focal-length: 0.58 m\n"
                + "  surface: {cut: from-file, file: triangle-dish.obj, unit: " + unit + "}\n";
    }

    /** A pipe may never end. */
    @Test
    void aDeviceIsRefused() {
        Path device = Path.of("/dev/null");
        assumeTrue(Files.exists(device), "no such device on this system");
        String said = assertThrows(ScenarioException.class, () -> ScenarioReader.read(device))
                .getMessage();
        assertTrue(said.contains("a pipe or a device, not a file"), said);
    }
}
