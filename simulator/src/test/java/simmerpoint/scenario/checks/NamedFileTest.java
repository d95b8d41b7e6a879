package simmerpoint.scenario.checks;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.values.InputFiles;

/** What is said of the other files that a scenario names. */
class NamedFileTest {
    private static final String SECRET = "root:x:0:0";
    private static final String MESH =
            "dish: {diameter: 1.2 m, focal-length: 58 cm, surface: {cut: from-file, file: %s, unit: mm}}";
    private static final String SUN =
            "dish: {diameter: 1.2 m, focal-length: 58 cm, surface: {cut: smooth}}\nsun: {shape: {kind: table, file: %s}}";
    private static final String RIBS =
            "dish: {diameter: 1.2 m, focal-length: 58 cm, surface: {cut: bent-strips, sectors: 3}}\nas-built: {ribs: %s}";

    @TempDir
    Path folder;

    private Path home;

    @BeforeEach
    void twoFolders() throws IOException {
        home = Files.createDirectory(folder.resolve("home"));
        Files.writeString(folder.resolve("theirs"), SECRET + "\n");
        Files.writeString(home.resolve("mine"), SECRET + "\n");
        Files.createSymbolicLink(home.resolve("link"), folder.resolve("theirs"));
    }

    @ParameterizedTest
    @CsvSource({"../theirs", "link"})
    void aFileOutsideTheFolderIsNotQuoted(String file) {
        for (String scenario : new String[] {MESH, SUN, RIBS}) {
            String said = refused(scenario, file);
            assertTrue(said.contains("line 1") && !said.contains("root"), said);
        }
    }

    @Test
    void aFileInTheFolderIsQuoted() {
        assertTrue(refused(MESH, "mine").contains("found 'root"), refused(MESH, "mine"));
        assertTrue(refused(SUN, "mine").contains("found 'root"), refused(SUN, "mine"));
    }

    @Test
    void allOfThemAreKnownAsRead() {
        for (String scenario : new String[] {MESH, SUN, RIBS}) {
            refused(scenario, "mine");
            assertTrue(InputFiles.contains(home.resolve("mine")));
        }
        assertFalse(InputFiles.contains(home.resolve("another")));
    }

    private String refused(String scenario, String file) {
        return assertThrows(
                        ScenarioException.class, () -> ScenarioReader.parse("t.yaml", scenario.formatted(file), home))
                .getMessage();
    }
}
