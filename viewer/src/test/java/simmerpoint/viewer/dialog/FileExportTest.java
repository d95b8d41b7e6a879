package simmerpoint.viewer.dialog;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.viewer.ScriptedAsks;

class FileExportTest {
    @TempDir
    Path folder;

    private final ScriptedAsks dialogs = new ScriptedAsks();
    private final List<String> told = new ArrayList<>();
    private final FileExport export = new FileExport(dialogs, Runnable::run, Runnable::run, told::add);

    private String last() {
        return told.get(told.size() - 1);
    }

    @Test
    void writesWhatIsMadeAndSaysSo() throws Exception {
        Path file = folder.resolve("a.csv");
        dialogs.file = Optional.of(file);
        export.write("Write a table", FileKind.TABLE, "light", () -> new byte[] {1, 2, 3});
        assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(file));
        assertEquals("Written: " + file, last());
        assertEquals(List.of("Write a table: light.csv"), dialogs.asked);
    }

    @Test
    void doesNothingWhenNoFileIsNamed() {
        export.write("Write a table", FileKind.TABLE, "light", () -> {
            throw new AssertionError("made for nobody");
        });
        assertTrue(told.isEmpty());
    }

    @Test
    void saysWhatWentWrongInOneSentence() {
        dialogs.file = Optional.of(folder.resolve("nowhere").resolve("a.csv"));
        export.write("Write a table", FileKind.TABLE, "light", () -> new byte[0]);
        assertTrue(last().contains("there is no folder"), last());
        Path file = folder.resolve("b.csv");
        dialogs.file = Optional.of(file);
        export.write("Write a table", FileKind.TABLE, "light", () -> {
            throw new ImpossibleSetupException("the pan would reach into the mirror");
        });
        assertEquals("Not written: the pan would reach into the mirror.", last());
        assertFalse(Files.exists(file));
    }
}
