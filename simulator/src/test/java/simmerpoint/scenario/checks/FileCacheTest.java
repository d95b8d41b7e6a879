package simmerpoint.scenario.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mesh.ObjReader;
import simmerpoint.input.InputFileException;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;

class FileCacheTest {
    private static final Path SCENARIO = Path.of("../scenarios/triangle-dish.yaml");

    @TempDir
    Path folder;

    /** Equal dishes have their light in common, which needs the very same mesh. */
    @Test
    void otherKeysLeaveTheDishEqual() throws Exception {
        Scenario before = ScenarioReader.read(SCENARIO).scenario();
        Scenario after = ScenarioReader.read(SCENARIO)
                .with(Map.of("stand.raise", "3 cm"))
                .scenario();
        assertEquals(before.dish(), after.dish());
    }

    @Test
    void aChangedFileIsReadAnew() throws Exception {
        FileCache<Mesh> cache = new FileCache<>();
        Path file = Files.writeString(folder.resolve("a.obj"), "v 0 0 0\nv 1 0 0.1\nv 0 1 0.1\nf 1 2 3\n");
        Mesh first = cache.read(file, 1, ObjReader::read);
        assertSame(first, cache.read(file, 1, ObjReader::read));
        assertEquals(0.001, cache.read(file, 0.001, ObjReader::read).vertices()[3]);
        Mesh again = cache.read(file, 1, ObjReader::read);
        Files.writeString(file, "v 0 0 0\nv 2 0 0.1\nv 0 1 0.1\nf 1 2 3\n");
        Files.setLastModifiedTime(file, FileTime.fromMillis(1_000_000_000_000L));
        Mesh changed = cache.read(file, 1, ObjReader::read);
        assertNotSame(again, changed);
        assertEquals(2, changed.vertices()[3]);
        Files.delete(file);
        assertThrows(InputFileException.class, () -> cache.read(file, 1, ObjReader::read));
    }
}
