package simmerpoint.viewer.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.drawing.FluxColours;
import simmerpoint.target.FluxMap;

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
        int[] pixels = FluxImage.pixels(frame, 40);
        int width = (int) frame.width();
        for (int y = 0; y < frame.height(); y++) {
            for (int x = 0; x < width; x++) {
                Place there = frame.at(x + 0.5, y + 0.5).orElseThrow();
                double flux = map().at(frame.column(there), frame.row(there));
                assertEquals(0xFF000000 | FluxColours.rgb(flux / 40), pixels[y * width + x]);
            }
        }
    }

    @Test
    void keepsItsShapeAndItsOrientation() {
        MapFrame pan = MapFrame.in(map(), Facing.FIRST_DOWN, 0, 0, 300, 300);
        // 4 cm along the first axis, downwards; 6 cm along the second, to the right.
        assertEquals(300, pan.width());
        assertEquals(200, pan.height());
        assertTrue(pan.y(new Place(0.015, 0)) > pan.y(new Place(-0.015, 0)));
        assertTrue(pan.x(new Place(0, 0.02)) > pan.x(new Place(0, -0.02)));
        MapFrame disc = MapFrame.in(map(), Facing.FIRST_UP, 0, 0, 300, 300);
        assertTrue(disc.y(new Place(0.015, 0)) < disc.y(new Place(-0.015, 0)));
        MapFrame wall = MapFrame.in(map(), Facing.FIRST_RIGHT, 0, 0, 300, 300);
        assertEquals(200, wall.width());
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
}
