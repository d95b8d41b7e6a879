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
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.map.MapFrame;
import simmerpoint.drawing.map.PlaneMap;
import simmerpoint.drawing.map.WallMap;
import simmerpoint.drawing.output.PngFile;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

class PngReportTest {
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

    /** A drawing alone as a picture. */
    private static BufferedImage alone(Drawing drawing) {
        return PngFile.image(drawing);
    }

    /** Where a map lies on the picture of its drawing alone, pixels. */
    private static Box pixels(MapFrame frame) {
        double scale = PngFile.WIDTH / PngFile.UNITS;
        Box box = frame.box();
        return new Box(scale * box.x(), scale * box.y(), scale * box.width(), scale * box.height());
    }

    private static Box whole(Drawing drawing) {
        return new Box(0, 0, PngFile.UNITS, alone(drawing).getHeight() * PngFile.UNITS / PngFile.WIDTH);
    }

    private static int rgb(BufferedImage image, double x, double y) {
        return rgb(image, (int) x, (int) y);
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
            BufferedImage image = PngFile.image(PngReport.sheet(result, system));
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
        PlaneMap map = PlaneMap.of(SampleResults.lopsided(), UnitSystem.METRIC);
        BufferedImage image = alone(map);
        Box box = pixels(map.frame(whole(map)));
        int up = light(rgb(image, box.middleX() + 20, box.middleY() - 120));
        int down = light(rgb(image, box.middleX() + 20, box.middleY() + 120));
        assertTrue(up > down + 100, up + " against " + down);
    }

    @Test
    void coloursAreThoseOfTheScale() {
        TraceResult result = SampleResults.wide();
        PlaneMap map = PlaneMap.of(result, UnitSystem.METRIC);
        BufferedImage image = alone(map);
        Box box = pixels(map.frame(whole(map)));
        double top = Math.max(
                result.maps().crossing().largest(),
                result.maps().wall().orElseThrow().largest());
        top -= SampleResults.RELATIVE_ERROR * top;
        int cell = 71;
        int expected = FluxColours.rgb(result.maps().crossing().at(cell, 75) / top);
        assertEquals(
                expected,
                rgb(image, box.x() + (75 + 0.5) / 120 * box.width(), box.y() + (cell + 0.5) / 120 * box.height()));
        assertEquals(FluxColours.rgb(0.999), rgb(image, box.right() + 24, box.y() + 2));
        assertEquals(FluxColours.rgb(0), rgb(image, box.right() + 24, box.bottom() - 2));
    }

    /** The side of the wall that faces away from the sun is in the middle of the strip. */
    @Test
    void theWallIsLitInTheMiddleAndBelow() {
        WallMap wall = WallMap.of(SampleResults.lopsided(), UnitSystem.METRIC).orElseThrow();
        BufferedImage image = alone(wall);
        Box box = pixels(wall.frame(whole(wall)));
        double low = box.y() + 0.92 * box.height();
        assertTrue(light(rgb(image, box.middleX(), low)) > light(rgb(image, box.x() + 80, low)) + 100);
        assertTrue(light(rgb(image, box.middleX(), low)) > light(rgb(image, box.middleX(), box.y() + 20)) + 100);
    }

    @Test
    void bytesAreAPngAndRepeat() throws IOException {
        byte[] bytes = PngFile.bytes(PngReport.sheet(SampleResults.disc(), UnitSystem.INCH));
        assertEquals(1400, ImageIO.read(new ByteArrayInputStream(bytes)).getWidth());
        assertArrayEquals(bytes, PngFile.bytes(PngReport.sheet(SampleResults.disc(), UnitSystem.INCH)));
    }
}
