package simmerpoint.dish.mesh;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.input.InputFileException;

/** Panels that lie on one another would be lit twice. */
class OverlapCheckTest {
    private static final Path SHIPPED = Path.of("../scenarios/triangle-dish.obj");

    /** A square of 1 m in two triangles, lines 1 to 6. */
    private static final String SQUARE = "v 0 0 0\nv 1 0 0\nv 1 1 0\nv 0 1 0\nf 1 2 3\nf 1 3 4\n";

    @TempDir
    Path folder;

    @Test
    void everyPanelTwiceIsRefused() throws IOException {
        List<String> lines = Files.readAllLines(SHIPPED);
        String panels = String.join("\n", lines);
        String again =
                String.join("\n", lines.stream().filter(l -> l.startsWith("f ")).toList());
        int first = 1
                + lines.indexOf(lines.stream()
                        .filter(l -> l.startsWith("f "))
                        .findFirst()
                        .orElseThrow());
        String sentence = refused(panels + "\n" + again + "\n", 0.001);
        assertTrue(sentence.contains("line " + (lines.size() + 1) + ":"), sentence);
        assertTrue(sentence.contains("lies on that of line " + first + ","), sentence);
    }

    @Test
    void theBackOfASheetIsRefused() throws IOException {
        assertTrue(refused(SQUARE + "f 3 2 1\n", 1).contains("line 7: this polygon lies on that of line 5"));
    }

    @Test
    void twoLayersThatTouchAreRefused() throws IOException {
        String layer = "v 0.2 0.2 4e-5\nv 0.8 0.2 4e-5\nv 0.5 0.9 4e-5\nf 5 6 7\n";
        assertTrue(refused(SQUARE + layer, 1).contains("count twice"));
    }

    @Test
    void aPanelAboveAnotherIsFine() throws Exception {
        assertEquals(
                3,
                read(SQUARE + "v 0.2 0.2 0.01\nv 0.8 0.2 0.01\nv 0.5 0.9 0.01\nf 5 6 7\n", 1)
                        .polygons());
    }

    @Test
    void neighboursWithRoundedCornersAreFine() throws Exception {
        String right = "v 0.9999 0 0\nv 2 0 0\nv 2 1 0\nv 0.9999 1 0\nf 5 6 7 8\n";
        assertEquals(3, read(SQUARE + right, 1).polygons());
    }

    private String refused(String text, double unit) {
        return assertThrows(InputFileException.class, () -> read(text, unit)).getMessage();
    }

    private Mesh read(String text, double unit) throws IOException, InputFileException {
        return ObjReader.read(Files.writeString(folder.resolve("dish.obj"), text), unit);
    }
}
