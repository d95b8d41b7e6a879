package simmerpoint.viewer.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.report.OutputException;

/** Where nothing can be written: a plain file stands in the place of the folder, which no right can get round. */
class UnwritableFolderTest {
    @TempDir
    Path folder;

    private Path closed;

    @BeforeEach
    void aFileInPlaceOfAFolder() throws IOException {
        closed = Files.writeString(folder.resolve("closed"), "no folder");
    }

    @Test
    void settingsAndRecentFilesAreForgottenWithoutAWord() throws IOException {
        SettingsFile.keep(closed.resolve("look.txt"), List.of("dark"));
        assertEquals(List.of(), SettingsFile.lines(closed.resolve("look.txt")));
        RecentFiles recent = RecentFiles.in(closed.resolve("recent.txt"));
        recent.add(folder.resolve("mine.yaml"));
        assertEquals("no folder", Files.readString(closed));
    }

    @Test
    void aScenarioIsNotSavedAndStaysChanged() {
        ScenarioDocument document = new ScenarioDocument();
        document.change(Map.of("dish.diameter", "1.1 m"));
        OutputException refused =
                assertThrows(OutputException.class, () -> document.saveAs(closed.resolve("mine.yaml")));
        assertTrue(refused.getMessage().contains("mine.yaml"), refused.getMessage());
        assertFalse(refused.getMessage().contains("Exception"), refused.getMessage());
        assertTrue(document.dirtyProperty().get());
    }

    @Test
    void aShippedScenarioWithAFileBesideItSaysWhereItCouldNotBePut() {
        IOException refused = assertThrows(
                IOException.class, () -> ShippedScenarios.open("triangle-dish", closed.resolve("examples")));
        assertEquals("The folder " + closed.resolve("examples") + " cannot be written.", refused.getMessage());
    }

    @Test
    void oneWithoutNeedsNoFolder() throws Exception {
        assertEquals(
                "School yard dish of card and foil",
                ShippedScenarios.open("school-yard", closed.resolve("examples"))
                        .read()
                        .scenario()
                        .title());
    }
}
