package simmerpoint.dish.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.input.InputFileException;

class ObjReaderTest {
    /** Two trapezoids of a dish in mm, the second wound the other way, and everything that is passed over. */
    private static final String DISH = "# school yard\nmtllib yard.mtl\no dish\n"
            + "v 100 -20 5\nv 300 -60 45 1.0\nv 300 60 45\nv 100 20 5 0.5 0.5 0.5\n"
            + "vn 0 0 1\nvt 0 0\ng ring\nusemtl foil\ns off\n"
            + "f 1 2 3 4\nv -100 -20 5\nv -300 -60 45\nv -300 60 45\nv -100 20 5 # last\n"
            + "f -4/1 -3/1/1 -2//1 \\\n -1\n";

    @TempDir
    Path folder;

    @Test
    void readsPolygonsInMetres() throws Exception {
        Mesh mesh = read(DISH);
        assertEquals("dish.obj", mesh.name());
        assertEquals(2, mesh.polygons());
        assertArrayEquals(new int[] {0, 4, 8}, mesh.firstCorner());
        assertEquals(0.3, mesh.vertices()[3], 1e-15);
        assertEquals(-0.06, mesh.vertices()[4], 1e-15);
        assertEquals(0.045, mesh.vertices()[5], 1e-15);
        assertEquals(24, mesh.vertices().length);
    }

    @Test
    void turnsEveryPolygonToFaceAlongTheAxisAndKeepsItsFirstCorner() throws Exception {
        assertArrayEquals(new int[] {0, 1, 2, 3, 4, 7, 6, 5}, read(DISH).corners());
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r", "\n"})
    void anyLineEndWillDo(String end) throws Exception {
        Mesh mesh = read(DISH.replace("\n", end));
        assertArrayEquals(new int[] {0, 1, 2, 3, 4, 7, 6, 5}, mesh.corners());
    }

    @Test
    void vertexNumbersMayPointForward() throws Exception {
        Mesh mesh = read("f 1 2 3\nv 0 0 0\nv 1 0 0\nv 0 1 0");
        assertArrayEquals(new int[] {0, 1, 2}, mesh.corners());
    }

    @Test
    void aCommentIsNotContinued() throws Exception {
        assertEquals(
                1, read("# in yard\\\nv 0 0 0\nv 1 0 0\nv 0 1 0 # \\\nf 1 2 3").polygons());
    }

    @Test
    void dentsAreAllowed() throws Exception {
        Mesh mesh = read("v 0 0 0\nv 2 0 0\nv 2 2 0\nv 1 0.5 0\nv 0 2 0\nf 1 2 3 4 5\n");
        assertEquals(5, mesh.corners().length);
    }

    /** Each row: what stands instead of the polygon in line 6, and words the message must hold. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "f 1 2|'a polygon of 2 corners'; 3 to 256",
                "f|'a polygon of 0 corners'",
                "f 1 2 6|found corner 6 in a file of 5 vertices; 1 to 5",
                "f 1 2 0|'corner 0 after 5 vertices'; vertices count from 1",
                "f 1 2 -6|'corner -6 after 5 vertices'",
                "f 1 2 99999999999999999999|'corner 99999999999999999999 after 5 vertices'",
                "f 1 2 -99999999999999999999|'corner -99999999999999999999 after 5 vertices'",
                "f 1 2 3.0|'3.0'; a corner is a vertex number",
                "f 1 2 3/|'3/'; a corner",
                "f 1 2 3//|'3//'; a corner",
                "f 1 2 3/x|'3/x'; a corner",
                "f 1 2 3/1/2/3|'3/1/2/3'; a corner",
                "f 1 2 three|'three'; a corner",
                "f 1 2 +3|'+3'; a corner",
                "f 1 2 3 1|corners 1 and 4 of a polygon at one point",
                "f 1 2 2 3|corners 2 and 3 of a polygon at one point",
                "f 1 2 4|without area",
                "f 1 2 3 5|corner 4 of a polygon 24.9 mm off its plane; 0.0711 mm",
                "f 1 3 2 4|meets or crosses itself",
                "v 1 2|'2 numbers after v'; a vertex has three",
                "v 1 2 3 4 5|'5 numbers after v'",
                "v 1 2 nan|'nan'; a coordinate is a plain number",
                "v 1 NaN 3|'NaN'; a coordinate",
                "v 1,5 2 3|'1,5'; a coordinate is a plain number with a decimal point",
                "v 1 2 0x1p3|'0x1p3'; a coordinate",
                "v 1 2 3f|'3f'; a coordinate",
                "v 1 2 1e|'1e'; a coordinate",
                "v 0 0 1000001|'0 0 1000001'; a vertex lies within 1 km",
                "v 0 0 1e999|'0 0 1e999'; a vertex lies within 1 km",
                "face 1 2 3|'face'; a line starts with v, f",
                "l 1 2|'l'; a line starts with v, f",
                "V 1 2 3|'V'; a line starts with v, f",
                "\u0000\u0001PK|'PK'; a line starts with v, f"
            })
    void aBadLineIsNamed(String bad, String said) throws Exception {
        String sentence = refused("v 0 0 0\nv 1000 0 0\nv 1000 1000 0\nv 2000 0 0\nv 0 1000 100\n" + bad + "\n");
        assertTrue(sentence.contains(", line 6: found "), sentence);
        assertTrue(sentence.contains(said), sentence);
    }

    @Test
    void anUprightPolygonReflectsNothing() throws Exception {
        String sentence = refused("v 0 0 0\nv 1 0 0\nv 1 0 1\nf 1 2 3\n");
        assertTrue(sentence.contains("line 4: found a polygon that stands upright"), sentence);
        assertEquals(1, read("v 0 0 0\nv 1 0.001 0\nv 1 0 1\nf 1 2 3\n").polygons());
    }

    /** A square of 1 m with one corner lifted by h is off its mean plane by h/4 (derived); 1/10000 of 0.7071 m allowed. */
    @Test
    void planeMeansPlaneToATenThousandth() throws Exception {
        String square = "v 0 0 0\nv 1000 0 0\nv 1000 1000 %s\nv 0 1000 0\nf 1 2 3 4\n";
        assertEquals(1, read(square.formatted("0.280")).polygons());
        String sentence = refused(square.formatted("0.286"));
        assertTrue(sentence.contains("0.0715 mm off its plane; 0.0707 mm"), sentence);
    }

    @Test
    void aSliverIsNoPanel() throws Exception {
        assertTrue(refused("v 0 0 0\nv 1000 0 0\nv 500 0.0001 0\nf 1 2 3\n").contains("without area"));
        assertEquals(1, read("v 0 0 0\nv 1000 0 0\nv 500 0.01 0\nf 1 2 3\n").polygons());
    }

    @Test
    void aStarThatGoesRoundTwiceCrossesItself() throws Exception {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < 5; i++) {
            double angle = 4 * Math.PI * i / 5;
            text.append(String.format(Locale.ROOT, "v %.9f %.9f 0\n", Math.cos(angle), Math.sin(angle)));
        }
        assertTrue(refused(text + "f 1 2 3 4 5\n").contains("meets or crosses itself"));
    }

    @Test
    void aSpikeMeetsItself() throws Exception {
        String spike = "v 0 0 0\nv 1 0 0\nv 1 1 0\nv 1 0.5 0\nv 2 0.5 0\nv 2 3 0\nv 0 3 0\nf 1 2 3 4 5 6 7\n";
        assertTrue(refused(spike).contains("meets or crosses itself"));
    }

    @Test
    void noPolygons() throws Exception {
        assertTrue(refused("v 0 0 0\n").contains("found no polygons"));
        assertTrue(refused("").contains("found no polygons"));
    }

    @Test
    void filesThatAreNone() {
        assertTrue(refusal(folder).contains("folder"));
        assertTrue(refusal(folder.resolve("none.obj")).contains("no such file"));
    }

    /** A file of a gigabyte with no bytes written takes no room on the disc. */
    @Test
    void twoHundredMegabytesAreEnough() throws Exception {
        Path file = folder.resolve("huge.obj");
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength(1_000_000_000);
        }
        assertTrue(refusal(file).contains("at most 200 MB"));
    }

    @Test
    void aMillionCharactersMakeALine() throws Exception {
        assertTrue(refused("v 0 0 0\nv " + "1".repeat(1_000_000)).contains("line 2: the line is longer"));
    }

    @Test
    void aMillionPolygonsAreEnough() throws Exception {
        String sentence = refused("v 0 0 0\nv 1 0 0\nv 0 1 0\n" + "f 1 2 3\n".repeat(1_000_001));
        assertTrue(sentence.contains("line 1000004: found 'one more polygon than 1,000,000'"), sentence);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesAUnitThatIsNone(double unit) {
        assertThrows(IllegalArgumentException.class, () -> ObjReader.read(folder, unit));
    }

    /** 200,000 squares on a paraboloid's grid, each of its own four vertices; about a second, the bound is for a busy machine. */
    @Test
    @Tag("slow")
    void readsAFewHundredThousandPolygonsInSeconds() throws Exception {
        Path file = folder.resolve("large.obj");
        try (var out = Files.newBufferedWriter(file)) {
            for (int i = 0; i < 200_000; i++) {
                double x = -500 + i % 500 * 2;
                double y = -400 + i / 500 * 2;
                double lean = x / 1600;
                double z = (x * x + y * y) / 3200;
                out.write("v " + x + " " + y + " " + z + "\nv " + (x + 2) + " " + y + " " + (z + 2 * lean) + "\nv "
                        + (x + 2) + " " + (y + 2) + " " + (z + 2 * lean) + "\nv " + x + " " + (y + 2) + " " + z
                        + "\nf -4 -3 -2 -1\n");
            }
        }
        // Processor time: other programs may keep the machine busy.
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long start = clock.getCurrentThreadCpuTime();
        Mesh mesh = ObjReader.read(file, 0.001);
        double seconds = (clock.getCurrentThreadCpuTime() - start) * 1e-9;
        assertEquals(200_000, mesh.polygons());
        assertTrue(seconds < 10, seconds + " s");
    }

    private Mesh read(String text) throws IOException, InputFileException {
        return ObjReader.read(Files.writeString(folder.resolve("dish.obj"), text), 0.001);
    }

    private String refused(String text) throws IOException {
        return refusal(Files.writeString(folder.resolve("dish.obj"), text));
    }

    private static String refusal(Path file) {
        String sentence = assertThrows(InputFileException.class, () -> ObjReader.read(file, 0.001))
                .getMessage();
        assertTrue(sentence.startsWith(file.toString()) && sentence.endsWith("."), sentence);
        assertTrue(sentence.chars().noneMatch(Character::isISOControl), sentence);
        return sentence;
    }
}
