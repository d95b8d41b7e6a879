package simmerpoint.viewer.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.report.OutputException;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ExampleScenario;
import simmerpoint.scenario.file.ScenarioReader;

class DocumentFilesTest {
    private static final String TEXT =
            "dish: {diameter: 1 m, focal-length: 60 cm, surface: {cut: smooth}}\r\nsun: {elevation: 40°}  # low";

    @TempDir
    Path folder;

    private Path file(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void savesTheScenarioInForceAndLeavesWrongValuesOut() throws Exception {
        Path file = file("a.yaml", TEXT);
        ScenarioDocument document = new ScenarioDocument();
        document.open(file);
        assertEquals("a.yaml", document.titleProperty().get());
        document.change(Map.of("sun.elevation", "35°"));
        document.change(Map.of("dish.hub", "far"));
        assertEquals(ScenarioDocument.Saving.DONE, document.save());
        assertEquals(TEXT.replace("40°", "35°"), Files.readString(file));
        assertTrue(document.dirtyProperty().get());
        assertTrue(document.unsaved().orElseThrow().contains("is saved, but the value typed for dish.hub"));
        document.undo();
        assertFalse(document.dirtyProperty().get());
        assertEquals(Optional.empty(), document.unsaved());
        assertEquals(
                document.readProperty().get().scenario().sun(),
                ScenarioReader.read(file).scenario().sun());
    }

    @Test
    void theExampleNeedsANameFirst() throws Exception {
        ScenarioDocument document = new ScenarioDocument();
        assertEquals(ScenarioDocument.Saving.NEEDS_NAME, document.save());
        document.change(Map.of("title", "Mine"));
        Path file = folder.resolve("mine.yaml");
        document.saveAs(file);
        assertEquals(Optional.of(file.toAbsolutePath()), document.fileProperty().get());
        assertEquals(
                ExampleScenario.text().replace("title: Tea kitchen at the lake hut", "title: Mine"),
                Files.readString(file));
        assertFalse(document.dirtyProperty().get());
        assertEquals(ScenarioDocument.Saving.DONE, document.save());
    }

    @Test
    void asksBeforeWritingOverWhatAnotherProgramWrote() throws Exception {
        Path file = file("a.yaml", TEXT);
        ScenarioDocument document = new ScenarioDocument(OpenedFile.read(file));
        document.change(Map.of("title", "x"));
        Files.writeString(file, TEXT + " and warm");
        assertEquals(ScenarioDocument.Saving.CHANGED_OUTSIDE, document.save());
        assertEquals(TEXT + " and warm", Files.readString(file));
        assertEquals(ScenarioDocument.Saving.DONE, document.saveOver());
        assertEquals(ScenarioDocument.Saving.DONE, document.save());
        Files.delete(file);
        assertEquals(ScenarioDocument.Saving.DONE, document.save());
        assertTrue(Files.exists(file));
    }

    @Test
    void aFileThatCannotBeUsedLeavesTheDeskAsItWas() throws Exception {
        ScenarioDocument document = new ScenarioDocument();
        String before = document.state().values().sourceText();
        Path file = file("bad.yaml", "dish: {diameter: far}");
        assertThrows(ScenarioException.class, () -> document.open(file));
        assertEquals(before, document.state().values().sourceText());
        assertEquals(Optional.empty(), document.fileProperty().get());
    }

    @Test
    void aFolderThatIsNotThereIsOneSentenceAndChangesNothing() {
        ScenarioDocument document = new ScenarioDocument();
        OutputException e =
                assertThrows(OutputException.class, () -> document.saveAs(folder.resolve("no/such/a.yaml")));
        assertTrue(e.getMessage().contains("there is no folder"), e.getMessage());
        assertEquals(Optional.empty(), document.fileProperty().get());
    }

    /** The mesh is found again from the other folder, and by the states before, too. */
    @Test
    void namesOfOtherFilesMoveWithTheScenario() throws Exception {
        Path home = Files.createDirectories(folder.resolve("home"));
        Path other = Files.createDirectories(folder.resolve("other/deep"));
        Files.copy(Path.of("../scenarios/triangle-dish.obj"), home.resolve("triangle-dish.obj"));
        Path file = home.resolve("t.yaml");
        Files.copy(Path.of("../scenarios/triangle-dish.yaml"), file);
        ScenarioDocument document = new ScenarioDocument(OpenedFile.read(file));
        document.change(Map.of("title", "x"));
        document.saveAs(other.resolve("t.yaml"));
        assertTrue(
                document.state().values().sourceText().contains("file: ../../home/triangle-dish.obj"),
                document.state().values().sourceText());
        ScenarioReader.read(other.resolve("t.yaml"));
        document.undo();
        document.change(Map.of("mirror.dust", "5 %"));
        assertTrue(
                document.state().problems().isEmpty(),
                document.state().problems().toString());
    }

    @Test
    void recentFilesAreRememberedNewestFirst() {
        Path store = folder.resolve("config/deep/recent");
        RecentFiles recent = RecentFiles.in(store);
        for (int k = 0; k < 12; k++) {
            recent.add(folder.resolve(k + ".yaml"));
        }
        recent.add(folder.resolve("5.yaml"));
        List<Path> files = RecentFiles.in(store).files();
        assertEquals(recent.files(), files);
        assertEquals(10, files.size());
        assertEquals(folder.resolve("5.yaml"), files.get(0));
        recent.remove(folder.resolve("5.yaml"));
        assertEquals(folder.resolve("11.yaml"), RecentFiles.in(store).files().get(0));
    }

    @Test
    void recentFilesThatCannotBeKeptDoNoHarm() throws Exception {
        RecentFiles recent =
                RecentFiles.in(file("plain", "\u0000\nnot absolute\n").resolve("recent"));
        recent.add(folder.resolve("a.yaml"));
        assertEquals(List.of(folder.resolve("a.yaml")), recent.files());
        assertEquals(
                List.of(), RecentFiles.in(file("odd", "\u0000\nnot absolute\n")).files());
        assertEquals(List.of(), RecentFiles.forgotten().files());
    }

    @Test
    void theConfigFolderIsTheSystemsOwn() {
        assertEquals(Path.of("/h/.config/simmerpoint"), ConfigFolder.of("Linux", "/h", name -> null));
        assertEquals(
                Path.of("/x/simmerpoint"),
                ConfigFolder.of("Linux", "/h", name -> name.equals("XDG_CONFIG_HOME") ? "/x" : null));
        assertEquals(
                Path.of("/h/Library/Application Support/simmerpoint"), ConfigFolder.of("Mac OS X", "/h", name -> null));
        assertEquals(
                Path.of("/r/simmerpoint"),
                ConfigFolder.of("Windows 11", "/h", name -> name.equals("APPDATA") ? "/r" : null));
    }
}
