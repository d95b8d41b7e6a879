package simmerpoint.drawing.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;

/** Pages on A4 with margins and overlaps of 10 mm, counted by hand: ⌈(L − u)/(u − o)⌉ + 1 each way. */
class PageGridTest {
    private static final PageGrid.Page A4 = new PageGrid.Page(0.190, 0.277, 0.010);

    @ParameterizedTest
    @CsvSource({"0.620, 0.311, 8, 6", "1.200, 0.180, 7, 5"})
    void piecesLieTheWayThatTakesFewerPages(double width, double height, int upright, int turned) {
        assertEquals(upright, A4.grid(false, width, height).pages());
        assertEquals(turned, A4.grid(true, height, width).pages());
        Polygon piece = new Polygon(
                List.of(new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height)));
        assertEquals(Math.min(upright, turned), PageGrid.of(piece, A4).pages());
    }
}
