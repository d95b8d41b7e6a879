package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import simmerpoint.drawing.output.PngFile;
import simmerpoint.quantities.PanQuantities;
import simmerpoint.quantities.Schemas;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.PanScenarios;
import simmerpoint.units.UnitSystem;

class PanReportsTest {
    private static final int WHITE = 0xFFFFFF;
    private static PanResult tea;

    @BeforeAll
    static void study() {
        tea = PanScenarios.study(PanScenarios.rings(50, 850));
    }

    @Test
    void theJsonHoldsWhatTheStudyFound() throws IOException {
        JsonNode root = Schemas.read(PanQuantities.DOCUMENT, tea);
        assertEquals(
                tea.here().absorbed().value(),
                root.get("here").get("absorbed_power_W").asDouble());
        assertTrue(root.get("here").get("absorbed_power_W_se").asDouble() > 0);
        assertEquals("boils", root.get("here").get("boil").asText());
        assertEquals(3, root.get("moves").size());
        for (JsonNode move : root.get("moves")) {
            assertEquals(41, move.get("positions").size());
            assertTrue(move.get("borders").size() >= 2);
        }
        JsonNode begins = root.get("here").get("level_begins");
        double last = 0;
        for (String level : List.of("keep_warm", "simmer", "boil", "fast_boil")) {
            double likely = begins.get(level + "_likely_W").asDouble();
            assertTrue(likely > last, level);
            last = likely;
        }
        assertEquals("simmer", root.get("simmer").get("heat_level").asText());
        List<String> names = new java.util.ArrayList<>();
        root.fieldNames().forEachRemaining(names::add);
        assertEquals("run", names.get(names.size() - 1));
    }

    @Test
    void theTableHasOneRowPerMoveAndPosition() {
        List<String> rows = new String(PanQuantities.DOCUMENT.csv(tea), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .toList();
        assertEquals(1 + 3 * 41, rows.size());
        int columns = rows.get(0).split(",").length;
        assertTrue(rows.stream().allMatch(row -> row.split(",", -1).length == columns));
        assertTrue(rows.get(1).startsWith("pull-back,0,-"), rows.get(1));
        assertFalse(String.join("", rows).contains("NaN"));
    }

    @Test
    void nothingRunsOverTheEdgeOfThePicture() {
        for (UnitSystem system : UnitSystem.values()) {
            BufferedImage image = PngFile.image(PanPicture.sheet(tea, system));
            for (int y = 0; y < image.getHeight(); y++) {
                for (int edge = 0; edge < 16; edge++) {
                    assertEquals(WHITE, image.getRGB(edge, y) & WHITE, "left at " + y);
                    assertEquals(WHITE, image.getRGB(1399 - edge, y) & WHITE, "right at " + y);
                }
            }
        }
    }
}
