package simmerpoint.dish.mesh;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import simmerpoint.input.InputFileException;

class ObjReaderProperties {
    private static final String GOOD =
            "v 0 0 0\nv 1 0 0.1\nv 1 1 0.1\nv 0 1 0\nv 0.5 2 -0.3\n" + "f 1 2 3 4\nf 4/1 3/2/2 5//1\nf -1 -3 -2\n";

    /** Whatever is typed over a good file, it gives polygons with area that face +z, or one sentence. */
    @Property(seed = "42", tries = 500, edgeCases = EdgeCasesMode.NONE)
    void anyDamageGivesAMeshOrASentence(
            @ForAll @IntRange(min = 0, max = 75) int from,
            @ForAll @IntRange(min = 0, max = 4) int length,
            @ForAll @CharRange(from = ' ', to = '~') @StringLength(max = 3) String typed)
            throws IOException {
        int end = Math.min(GOOD.length(), from + length);
        Path file = Files.createTempFile("damaged", ".obj");
        try {
            Files.writeString(file, GOOD.substring(0, from) + typed + GOOD.substring(end));
            Mesh mesh = ObjReader.read(file, 1);
            for (int k = 0; k < mesh.polygons(); k++) {
                PolygonOutline outline = new PolygonOutline(mesh, k);
                assertTrue(outline.normalZ() > 0 && outline.area() > 0);
            }
        } catch (InputFileException e) {
            assertTrue(
                    e.getMessage().startsWith(file.toString()) && e.getMessage().endsWith("."), e.getMessage());
        } finally {
            Files.delete(file);
        }
    }
}
