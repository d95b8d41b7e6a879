package simmerpoint.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.drawing.FluxColours;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

class PngReportTest {
    private static final int MAP_LEFT = 40;
    private static final int MAP_TOP = 146;
    private static final int MAP_SIZE = 740;
    private static final int WHITE = 0xFFFFFF;

    static Stream<TraceResult> results() {
        return Stream.of(
                SampleResults.tight(),
                SampleResults.wide(),
                SampleResults.lopsided(),
                SampleResults.disc(),
                SampleResults.dark(),
                SampleResults.with("W".repeat(80), 1e-4, 1e9),
                SampleResults.with("", 3, 1e-9));
    }

    private static int rgb(BufferedImage image, int x, int y) {
        return image.getRGB(x, y) & WHITE;
    }

    private static int light(int rgb) {
        return (rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255);
    }

    @ParameterizedTest
    @MethodSource("results")
    void nothingRunsOverTheEdge(TraceResult result) {
        for (UnitSystem system : UnitSystem.values()) {
            BufferedImage image = PngReport.image(result, system);
            assertEquals(1400, image.getWidth());
            assertTrue(image.getHeight() > 900 && image.getHeight() < 1600, "height " + image.getHeight());
            for (int k = 0; k < image.getHeight(); k++) {
                for (int edge = 0; edge < 20; edge++) {
                    assertEquals(WHITE, rgb(image, edge, k), "left edge at " + k);
                    assertEquals(WHITE, rgb(image, 1399 - edge, k), "right edge at " + k);
                }
            }
            for (int k = 0; k < image.getWidth(); k++) {
                assertEquals(WHITE, rgb(image, k, 3), "upper edge at " + k);
                assertEquals(WHITE, rgb(image, k, image.getHeight() - 4), "lower edge at " + k);
            }
        }
    }

    /** A pan is shown with the sun's side at the top, so light on the sun's side is in the upper half. */
    @Test
    void lightTowardsTheSunIsInTheUpperHalf() {
        BufferedImage image = PngReport.image(SampleResults.lopsided(), UnitSystem.METRIC);
        int middle = MAP_LEFT + MAP_SIZE / 2;
        int up = light(rgb(image, middle + 20, MAP_TOP + 250));
        int down = light(rgb(image, middle + 20, MAP_TOP + 490));
        assertTrue(up > down + 100, up + " against " + down);
    }

    @Test
    void coloursAreThoseOfTheScale() {
        TraceResult result = SampleResults.wide();
        BufferedImage image = PngReport.image(result, UnitSystem.METRIC);
        double top = Math.max(
                result.maps().crossing().largest(),
                result.maps().wall().orElseThrow().largest());
        top -= SampleResults.RELATIVE_ERROR * top;
        int cell = 71;
        int expected = FluxColours.rgb(result.maps().crossing().at(cell, 75) / top);
        int x = MAP_LEFT + (int) ((75 + 0.5) / 120 * MAP_SIZE);
        int y = MAP_TOP + (int) ((cell + 0.5) / 120 * MAP_SIZE);
        assertEquals(expected, rgb(image, x, y));
        assertEquals(FluxColours.rgb(0.999), rgb(image, MAP_LEFT + MAP_SIZE + 40, MAP_TOP + 1));
        assertEquals(FluxColours.rgb(0), rgb(image, MAP_LEFT + MAP_SIZE + 40, MAP_TOP + MAP_SIZE - 1));
    }

    /** The side of the wall that faces away from the sun is in the middle of the strip. */
    @Test
    void theWallIsLitInTheMiddleAndBelow() {
        BufferedImage image = PngReport.image(SampleResults.lopsided(), UnitSystem.METRIC);
        int top = MAP_TOP + MAP_SIZE + 92;
        assertTrue(light(rgb(image, 700, top + 185)) > light(rgb(image, 120, top + 185)) + 100);
        assertTrue(light(rgb(image, 700, top + 185)) > light(rgb(image, 700, top + 20)) + 100);
    }

    @Test
    void bytesAreAPngAndRepeat() throws IOException {
        byte[] bytes = PngReport.bytes(SampleResults.disc(), UnitSystem.INCH);
        assertEquals(1400, ImageIO.read(new ByteArrayInputStream(bytes)).getWidth());
        assertArrayEquals(bytes, PngReport.bytes(SampleResults.disc(), UnitSystem.INCH));
    }
}
