package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.aim.AimAnswer;
import simmerpoint.drawing.output.PngFile;
import simmerpoint.quantities.AimQuantities;
import simmerpoint.quantities.Schemas;
import simmerpoint.study.Cookers;
import simmerpoint.study.aim.AimPlan;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimStudy;
import simmerpoint.study.aim.MisaimDirection;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;

class AimReportsTest {
    private static final int WHITE = 0xFFFFFF;
    private static AimResult result;

    @BeforeAll
    static void study() {
        TraceOptions few = TraceOptions.defaults().withRays(1 << 11).withSeed(5).withThreads(2);
        result = AimStudy.run(Cookers.usual(Cookers.HILLSIDE, Cookers.COUNTRY), AimPlan.USUAL, few, Progress.NONE);
    }

    @Test
    void theJsonHoldsWhatTheStudyFound() throws IOException {
        JsonNode root = Schemas.read(AimQuantities.DOCUMENT, result);
        assertEquals(result.deadOnWatts().value(), root.get("dead_on_power_W").asDouble());
        assertEquals(MisaimDirection.values().length, root.get("tolerance").size());
        JsonNode up = root.get("tolerance").get(0);
        assertEquals("drift up", up.get("way").asText());
        assertEquals(
                result.tolerance().angle(MisaimDirection.DRIFT_UP).orElseThrow().value(),
                up.get("angle_rad").asDouble());
        assertTrue(root.get("sun").get("real").asBoolean());
        assertEquals(
                60 * result.minutes().orElseThrow().value(),
                root.get("aim_again_s").asDouble());
        assertEquals(4, root.get("curves").size());
        assertEquals(625, root.get("maps").get(1).get("cells").size());
        assertEquals(17, root.get("long_interval").get("moments").size());
        List<String> names = new ArrayList<>();
        root.fieldNames().forEachRemaining(names::add);
        assertEquals("run", names.get(names.size() - 1));
    }

    @Test
    void theTableHasEqualRows() {
        List<String> rows = new String(AimQuantities.DOCUMENT.csv(result), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .toList();
        assertEquals("sheet,kind,time_s,up_rad,side_rad,power_W,power_W_se,share", rows.get(0));
        assertTrue(rows.stream().allMatch(row -> row.split(",", -1).length == 8));
        assertEquals(1250, rows.stream().filter(row -> row.startsWith("map,")).count());
        assertFalse(String.join("", rows).contains("NaN"));
    }

    @Test
    void nothingRunsOverTheEdgeOfThePicture() {
        for (UnitSystem system : UnitSystem.values()) {
            BufferedImage image = PngFile.image(AimPicture.sheet(result, system));
            for (int y = 0; y < image.getHeight(); y++) {
                for (int edge = 0; edge < 16; edge++) {
                    assertEquals(WHITE, image.getRGB(edge, y) & WHITE, "left at " + y);
                    assertEquals(WHITE, image.getRGB(1399 - edge, y) & WHITE, "right at " + y);
                }
            }
        }
    }

    /** In the middle the map is brightest, in its corners dark: the colours of the scale's two ends. */
    @Test
    void theMapsAreLightInTheMiddleAndDarkInTheCorners() {
        BufferedImage image = PngFile.image(AimPicture.sheet(result, UnitSystem.METRIC));
        int top = image.getHeight() - 192 - 507;
        for (int left : new int[] {98, 759}) {
            int corner = image.getRGB(left + 6, top + 6);
            int middle = image.getRGB(left + 253, top + 253);
            assertTrue(lightness(middle) > 2 * lightness(corner), left + ": " + lightness(middle));
        }
    }

    private static int lightness(int rgb) {
        return (rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255);
    }

    @Test
    void theAnswerBeginsWithMinutesAndWatts() {
        List<String> lines = TextReport.lines(AimAnswer.of(result, UnitSystem.METRIC), 80, false);
        String text = String.join(" ", lines).replaceAll(" +", " ");
        assertTrue(text.startsWith("Any cooker How often to aim Aim again every "), text);
        assertTrue(text.contains("12:00 on 21 June 2026"), text);
        assertTrue(text.contains("Never look along the dish\u2019s axis"), text);
        assertTrue(lines.stream().allMatch(line -> line.length() <= 80), text);
        List<String> inches = TextReport.lines(AimAnswer.of(result, UnitSystem.INCH), 60, true);
        assertTrue(String.join(" ", inches).contains(" in long"), inches.toString());
    }
}
