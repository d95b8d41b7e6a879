package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import simmerpoint.drawing.output.PngFile;
import simmerpoint.quantities.CompareQuantities;
import simmerpoint.quantities.Schemas;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;

class CompareReportsTest {
    private static final int WHITE = 0xFFFFFF;
    private static final String[] KEYS = {"dish.surface.sectors=12,24", "title=\"one, two\",three"};
    private static final Comparison FOUR = SampleComparisons.of(KEYS);

    @Test
    void jsonHoldsEveryRowWithItsErrors() throws IOException {
        JsonNode json = Schemas.read(CompareQuantities.DOCUMENT, FOUR);
        assertEquals(4, json.get("rows").size());
        assertEquals(2, json.get("seen_errors").asDouble());
        for (int k = 0; k < 4; k++) {
            JsonNode row = json.get("rows").get(k);
            ComparedRow wanted = FOUR.rows().get(k);
            for (String figure : List.of(
                    "absorbed_power_W",
                    "difference_power_W",
                    "caught_power_W",
                    "peak_flux_W_m2",
                    "drift_tolerance_rad",
                    "aim_again_s")) {
                assertTrue(row.has(figure) && row.has(figure + "_se"), figure);
            }
            assertEquals(wanted.absorbed().value(), row.get("absorbed_power_W").asDouble());
            assertEquals(
                    wanted.difference().standardError(),
                    row.get("difference_power_W_se").asDouble());
            assertEquals("boils", row.get("boil").asText());
            assertEquals(
                    4 * 60 * Math.toDegrees(row.get("drift_tolerance_rad").asDouble()),
                    row.get("aim_again_s").asDouble(),
                    1e-9);
        }
        assertEquals(
                "24",
                json.get("rows")
                        .get(0)
                        .get("varied")
                        .get("dish.surface.sectors")
                        .asText());
        List<String> names = new ArrayList<>();
        json.fieldNames().forEachRemaining(names::add);
        assertEquals("run", names.get(names.size() - 1));
    }

    @Test
    void oneThreadAndTwoGiveTheSameBytesButForTheRun() throws IOException {
        Comparison one = SampleComparisons.of(TraceOptions.defaults().withThreads(1), KEYS);
        ObjectNode a = (ObjectNode) Schemas.read(CompareQuantities.DOCUMENT, one);
        ObjectNode b = (ObjectNode) Schemas.read(CompareQuantities.DOCUMENT, FOUR);
        assertEquals(1, a.remove("run").get("threads").asInt());
        assertEquals(2, b.remove("run").get("threads").asInt());
        assertEquals(a.toString(), b.toString());
        assertArrayEquals(CompareQuantities.DOCUMENT.csv(one), CompareQuantities.DOCUMENT.csv(FOUR));
        assertArrayEquals(
                PngFile.bytes(ComparePicture.sheet(one, UnitSystem.METRIC)),
                PngFile.bytes(ComparePicture.sheet(FOUR, UnitSystem.METRIC)));
    }

    @Test
    void csvHasARowForEachUnderItsHeads() {
        List<String> lines = new String(CompareQuantities.DOCUMENT.csv(FOUR), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .toList();
        assertEquals(5, lines.size());
        assertTrue(lines.get(0)
                .startsWith("rank,name,file,dish.surface.sectors,title,cooking_power_W,cooking_power_W_se,"));
        String comma =
                lines.stream().filter(line -> line.contains("one")).findFirst().orElseThrow();
        assertTrue(comma.contains(",\"one, two\","), comma);
        int columns = lines.get(0).split(",").length;
        String plain = "(\"[^\"]*\"|[^,\"]*)";
        String row = plain + ("," + plain).repeat(columns - 1);
        assertTrue(lines.stream().allMatch(line -> line.matches(row)), String.join("\n", lines));
    }

    @Test
    void picturesKeepInsideTheirSheetsWithTwoRowsAndWithMany() {
        List<Comparison> all = List.of(
                FOUR,
                SampleComparisons.of("dish.surface.sectors=24,25", "title=" + "a long title ".repeat(12) + ",b"),
                manyOf(SampleComparisons.of("stand.pull-back=0 cm,1 cm"), 70));
        for (Comparison c : all) {
            BufferedImage image = PngFile.image(ComparePicture.sheet(c, UnitSystem.INCH));
            assertEquals(1400, image.getWidth());
            for (int y = 0; y < image.getHeight(); y++) {
                for (int edge = 0; edge < 8; edge++) {
                    assertEquals(WHITE, image.getRGB(edge, y) & WHITE, "left at " + y);
                    assertEquals(WHITE, image.getRGB(1399 - edge, y) & WHITE, "right at " + y);
                }
            }
        }
        assertTrue(PngFile.image(ComparePicture.sheet(all.get(2), UnitSystem.METRIC))
                        .getHeight()
                < 2100);
    }

    /** The same rows again and again. */
    private static Comparison manyOf(Comparison c, int rows) {
        List<ComparedRow> all = IntStream.range(0, rows)
                .mapToObj(k -> c.rows().get(k * c.rows().size() / rows))
                .toList();
        return new Comparison(all, c.seed(), c.replicates(), true, false, c.run());
    }
}
