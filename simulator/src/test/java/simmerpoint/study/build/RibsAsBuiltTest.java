package simmerpoint.study.build;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** Ribs that are not as planned, against the plan and against meshes built so. */
class RibsAsBuiltTest {
    private static final int RIBS = 12;
    private static final double FOCUS = 0.6;
    private static final double RIM = 0.5;
    private static final double HUB = 0.03;
    private static final String COOKER =
            "mirror: {slope-error: 3 mrad}\nsun: {elevation: 55°}\npan: {diameter: 18 cm, height: 10 cm}\n";
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withThreads(2).withRays(1 << 17);

    @TempDir
    Path folder;

    private static String dish(String surface) {
        return "dish: {diameter: 1 m, focal-length: 60 cm, hub: 60 mm, surface: {" + surface + "}}\n" + COOKER;
    }

    private Scenario read(String text) throws ScenarioException {
        return ScenarioReader.parse("test", text, folder).scenario();
    }

    /** Ribs that lie so much above their plan at the rim, and in proportion to their distance from the hub before it. */
    private String asBuilt(IntToDoubleFunction atRim) throws Exception {
        StringBuilder table = new StringBuilder("# ribs of a test\nfrom_middle_mm");
        for (int k = 1; k <= RIBS; k++) {
            table.append(",rib_").append(k);
        }
        for (double r : new double[] {HUB, 0.2, 0.35, RIM}) {
            table.append(String.format(Locale.ROOT, "%n%.1f", 1000 * r));
            for (int k = 0; k < RIBS; k++) {
                double depth = height(RIM) - height(k, r, atRim);
                table.append(String.format(Locale.ROOT, ",%.6f", 1000 * depth));
            }
        }
        Files.writeString(folder.resolve("ribs.csv"), table.append(System.lineSeparator()));
        return "as-built: {ribs: ribs.csv}\n";
    }

    private static double height(double r) {
        return r * r / (4 * FOCUS);
    }

    private static double height(int rib, double r, IntToDoubleFunction atRim) {
        return height(r) + atRim.applyAsDouble(rib % RIBS) * (r - HUB) / (RIM - HUB);
    }

    private static PairedWatts watts(Scenario scenario) {
        return PairedStudy.watts(List.of(scenario), OPTIONS, Progress.NONE).get(0);
    }

    /** Numbers of the table have a nanometre's rounding. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"cut: bent-strips, sectors: 12", "cut: flat-rings, sectors: 12, rings: 4"})
    void ribsAsPlannedTraceAsThePlan(String surface) throws Exception {
        PairedWatts planned = watts(read(dish(surface)));
        PairedWatts built = watts(read(dish(surface) + asBuilt(k -> 0)));
        assertArrayEquals(
                planned.usefulByReplicate(),
                built.usefulByReplicate(),
                1e-3 * planned.useful().value() / 100);
        assertEquals(planned.apertureArea(), built.apertureArea(), 1e-12);
    }

    /** Uneven ribs: a few millimetres, now up, now down. */
    private static double uneven(int rib) {
        return 0.004 * Math.sin(2.4 * rib + 1);
    }

    /** A mesh whose panels join points of both ribs at equal distance from the axis, cut into small triangles. */
    private String mesh(double[] radii, int across) throws Exception {
        StringBuilder obj = new StringBuilder();
        int points = 0;
        for (int k = 0; k < RIBS; k++) {
            for (int i = 0; i + 1 < radii.length; i++) {
                for (int j = 0; j < across; j++) {
                    double t0 = (double) j / across;
                    double t1 = (j + 1.0) / across;
                    vertex(obj, k, radii[i], t0);
                    vertex(obj, k, radii[i + 1], t0);
                    vertex(obj, k, radii[i + 1], t1);
                    vertex(obj, k, radii[i], t1);
                    int v = points + 1;
                    obj.append(String.format("f %d %d %d%nf %d %d %d%n", v, v + 1, v + 2, v, v + 2, v + 3));
                    points += 4;
                }
            }
        }
        Files.writeString(folder.resolve("built.obj"), obj);
        return "cut: from-file, file: built.obj, unit: m";
    }

    private static void vertex(StringBuilder obj, int rib, double r, double t) {
        double first = 2 * Math.PI * rib / RIBS;
        double second = 2 * Math.PI * (rib + 1) / RIBS;
        double x = r * ((1 - t) * Math.cos(first) + t * Math.cos(second));
        double y = r * ((1 - t) * Math.sin(first) + t * Math.sin(second));
        double z = (1 - t) * height(rib, r, RibsAsBuiltTest::uneven) + t * height(rib + 1, r, RibsAsBuiltTest::uneven);
        obj.append(String.format(Locale.ROOT, "v %.9f %.9f %.9f%n", x, y, z));
    }

    private static double[] radii(int steps) {
        double[] radii = new double[steps + 1];
        for (int k = 0; k <= steps; k++) {
            radii[k] = HUB + (RIM - HUB) * k / steps;
        }
        return radii;
    }

    /** The mesh's small panels lean by at most 2 mrad more than the strip; 4 standard errors and a thousandth are allowed. */
    @Test
    void stripsOnUnevenRibsAreTheMeshBuiltSo() throws Exception {
        Estimate built = watts(read(dish("cut: bent-strips, sectors: 12") + asBuilt(RibsAsBuiltTest::uneven)))
                .useful();
        Estimate planned = watts(read(dish("cut: bent-strips, sectors: 12"))).useful();
        assertSame(
                watts(read(dish(mesh(radii(100), 4)).replace(", hub: 60 mm", "")))
                        .useful(),
                built);
        assertTrue(planned.value() - built.value() > 0.02 * planned.value(), planned + " planned, built " + built);
    }

    @Test
    void flatPanelsOnUnevenRibsAreTheMeshBuiltSo() throws Exception {
        Estimate built = watts(read(dish("cut: flat-rings, sectors: 12, rings: 4") + asBuilt(RibsAsBuiltTest::uneven)))
                .useful();
        double[] fine = new double[33];
        double[] borders = radii(4);
        for (int k = 0; k < fine.length; k++) {
            fine[k] = borders[0] + (borders[4] - borders[0]) * k / 32;
        }
        assertSame(
                watts(read(dish(ringMesh(fine, borders)).replace(", hub: 60 mm", "")))
                        .useful(),
                built);
    }

    /** Ribs with straight parts from border to border: heights in between are between those of the borders. */
    private String ringMesh(double[] fine, double[] borders) throws Exception {
        String surface = mesh(fine, 8);
        List<String> lines = Files.readAllLines(folder.resolve("built.obj"));
        StringBuilder obj = new StringBuilder();
        int vertex = 0;
        for (String line : lines) {
            if (!line.startsWith("v")) {
                obj.append(line).append(System.lineSeparator());
                continue;
            }
            int quad = vertex / 4;
            int corner = vertex % 4;
            int row = quad / 8 % (fine.length - 1) + (corner == 1 || corner == 2 ? 1 : 0);
            double t = (quad % 8 + (corner >= 2 ? 1 : 0)) / 8.0;
            int rib = quad / 8 / (fine.length - 1);
            double z = (1 - t) * straight(rib, fine[row], borders) + t * straight(rib + 1, fine[row], borders);
            String[] words = line.split(" ");
            obj.append(String.format(Locale.ROOT, "v %s %s %.9f%n", words[1], words[2], z));
            vertex++;
        }
        Files.writeString(folder.resolve("built.obj"), obj);
        return surface;
    }

    private static double straight(int rib, double r, double[] borders) {
        int k = Math.min(3, (int) ((r - borders[0]) / (borders[1] - borders[0]) + 1e-9));
        double share = (r - borders[k]) / (borders[k + 1] - borders[k]);
        return (1 - share) * height(rib, borders[k], RibsAsBuiltTest::uneven)
                + share * height(rib, borders[k + 1], RibsAsBuiltTest::uneven);
    }

    private static void assertSame(Estimate expected, Estimate found) {
        double chance = 4 * Math.hypot(expected.standardError(), found.standardError());
        assertEquals(expected.value(), found.value(), chance + 1e-3 * expected.value());
        assertTrue(chance < 5e-3 * expected.value(), "chance hides nothing: " + chance);
    }

    /** With one rib off, mending that one is all there is to gain. */
    @Test
    void theRibThatIsOffComesFirst() throws Exception {
        Scenario built = read(dish("cut: bent-strips, sectors: 12") + asBuilt(k -> k == 4 ? -0.008 : 0));
        RibsAsBuilt ribs = BuildTrace.run(built, new double[0], OPTIONS, Progress.NONE)
                .ribs()
                .orElseThrow();
        RibsAsBuilt.Rib first = ribs.ribs().get(0);
        assertEquals(5, first.number());
        assertEquals(0.008, first.farthestOff(), 1e-8);
        assertTrue(first.gain().value() > 5 * first.gain().standardError(), first.toString());
        assertEquals(
                ribs.gain().value(), first.gain().value(), 1e-6 * ribs.planned().value());
        assertEquals(0, ribs.ribs().get(1).gain().value(), 1e-6 * ribs.planned().value());
        assertEquals(0.008 / (RIM - HUB), ribs.slopeDifference(), 1e-6);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "from_middle,rib_1,rib_2,rib_3; the first line names the columns and the unit",
                "from_middle_mm,rib_1,rib_2,rib_3\\n30,1,2\\n40,1,2,3; 3 numbers; a distance and 3 depths",
                "from_middle_mm,rib_1,rib_2,rib_3\\n30,1,x,2; found 'x'",
                "from_middle_mm,rib_1,rib_2,rib_3\\n30,1,2,3\\n20,1,2,3; a distance of 0 or more that rises",
                "from_middle_mm,rib_1,rib_2,rib_3\\n30,1,2,3\\n40,1,2,3; the file has 3 ribs and the dish has 12",
                "from_middle_mm,rib_1,rib_2,rib_3\\n30,1,2,3; found 1 distances"
            })
    void badTablesAreRefused(String table, String rest) throws Exception {
        Files.writeString(folder.resolve("ribs.csv"), table.replace("\\n", "\n"));
        String text = dish("cut: bent-strips, sectors: 12") + "as-built: {ribs: ribs.csv}\n";
        ScenarioException e = assertThrows(ScenarioException.class, () -> read(text));
        assertTrue(e.getMessage().contains(rest.strip()), e.getMessage());
    }
}
