package simmerpoint.drawing.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.ColourScheme;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.output.Java2dCanvas;
import simmerpoint.sampling.Estimate;
import simmerpoint.target.FluxMap;
import simmerpoint.units.UnitSystem;

class MapFrameTest {
    /** 4 × 3 cells of 1 cm × 2 cm from (−2 cm, −3 cm) on, flux = 10 × column + row. */
    private static FluxMap map() {
        double[] flux = new double[12];
        for (int k = 0; k < 12; k++) {
            int row = k / 4;
            flux[k] = 10.0 * (k % 4) + row;
        }
        return new FluxMap(4, 3, 0.01, 0.02, -0.02, -0.03, flux, new double[12]);
    }

    @ParameterizedTest
    @EnumSource(Facing.class)
    void aPlaceIsReadWhereItIsDrawn(Facing facing) {
        MapFrame frame = MapFrame.in(map(), facing, 10, 20, 300, 200);
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 3; j++) {
                Place middle = new Place(map().first(i), map().second(j));
                Place read = frame.at(frame.x(middle), frame.y(middle)).orElseThrow();
                assertEquals(middle.first(), read.first(), 1e-12);
                assertEquals(middle.second(), read.second(), 1e-12);
                assertEquals(i, frame.column(read));
                assertEquals(j, frame.row(read));
            }
        }
        assertTrue(frame.at(9, 50).isEmpty() && frame.at(50, 19).isEmpty());
    }

    @ParameterizedTest
    @EnumSource(Facing.class)
    void everyPixelHasTheColourOfTheCellThatIsReadThere(Facing facing) {
        MapFrame frame = MapFrame.in(map(), facing, 0, 0, 60, 60);
        int width = (int) frame.box().width();
        int height = (int) frame.box().height();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        new Java2dCanvas(image.createGraphics(), ColourScheme.PRINT)
                .image(MapRaster.of(map(), facing, 40), frame.box());
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                Place there = frame.at(x + 0.5, y + 0.5).orElseThrow();
                double flux = map().at(frame.column(there), frame.row(there));
                assertEquals(0xFF000000 | FluxColours.rgb(flux / 40), image.getRGB(x, y));
            }
        }
    }

    @Test
    void keepsItsShapeAndItsOrientation() {
        MapFrame pan = MapFrame.in(map(), Facing.FIRST_DOWN, 0, 0, 300, 300);
        // 4 cm along the first axis, downwards; 6 cm along the second, to the right.
        assertEquals(300, pan.box().width());
        assertEquals(200, pan.box().height());
        assertTrue(pan.y(new Place(0.015, 0)) > pan.y(new Place(-0.015, 0)));
        assertTrue(pan.x(new Place(0, 0.02)) > pan.x(new Place(0, -0.02)));
        MapFrame disc = MapFrame.in(map(), Facing.FIRST_UP, 0, 0, 300, 300);
        assertTrue(disc.y(new Place(0.015, 0)) < disc.y(new Place(-0.015, 0)));
        MapFrame wall = MapFrame.in(map(), Facing.FIRST_RIGHT, 0, 0, 300, 300);
        assertEquals(200, wall.box().width());
        assertTrue(wall.y(new Place(0, 0.02)) < wall.y(new Place(0, -0.02)));
    }

    @ParameterizedTest
    @EnumSource(Facing.class)
    void arrowKeysGoWhereTheyPointAndStayOnTheMap(Facing facing) {
        MapFrame frame = MapFrame.in(map(), facing, 0, 0, 300, 300);
        Place from = new Place(map().first(1), map().second(1));
        assertTrue(frame.x(frame.stepped(from, 1, 0)) > frame.x(from) + 1);
        assertTrue(frame.y(frame.stepped(from, 0, 1)) > frame.y(from) + 1);
        Place corner = frame.stepped(from, 99, 99);
        assertEquals(corner, frame.stepped(corner, 1, 1));
        assertTrue(frame.at(frame.x(corner), frame.y(corner)).isPresent());
    }

    @Test
    void aCircleThatIsNotThereSaysWhy() {
        FigureFormat figures = new FigureFormat(UnitSystem.METRIC);
        assertEquals(
                "less than 90 % of light gets to this level", MapKey.circle("90 %", Optional.empty(), figures, 0.2));
        assertEquals(
                "90 % of light within 12\u00a0cm of the middle",
                MapKey.circle("90 %", Optional.of(Estimate.exact(0.12)), figures, 0.2));
    }
}
