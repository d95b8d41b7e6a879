package simmerpoint.viewer.canvas;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Path;

/** Lines cut off at a box, by plane geometry. */
class LineClipTest {
    private static final Box BOX = new Box(0, 0, 100, 50);

    @Test
    void aLongLineIsCutOffAtBothEdges() {
        List<LineClip.Piece> pieces = LineClip.of(Path.open(-1e9, 25, 1e9, 25), BOX);
        assertEquals(List.of(new LineClip.Piece(0, 25, 100, 25, 1e9)), pieces);
    }

    @Test
    void aLineInsideStaysAndOneOutsideGoes() {
        assertEquals(List.of(new LineClip.Piece(10, 10, 40, 50, 0)), LineClip.of(Path.open(10, 10, 40, 50), BOX));
        assertEquals(List.of(), LineClip.of(Path.open(-10, -10, 40, -10), BOX));
        assertEquals(List.of(), LineClip.of(Path.open(-100, 20, 20, -100), BOX));
    }

    /** A diagonal of slope 1 through (0, −20) is inside from (20, 0) to (70, 50): 50√2 long, after 20√2. */
    @Test
    void aSlantedLineKeepsItsPhase() {
        LineClip.Piece piece = LineClip.of(Path.open(0, -20, 200, 180), BOX).get(0);
        assertEquals(20, piece.x1(), 1e-9);
        assertEquals(70, piece.x2(), 1e-9);
        assertEquals(20 * Math.sqrt(2), piece.before(), 1e-9);
    }

    /** A square around the box shows nothing; one through it shows the two edges that cross it. */
    @Test
    void aClosedPathIsClippedEdgeByEdge() {
        assertEquals(List.of(), LineClip.of(Path.closed(-9, -9, 109, -9, 109, 59, -9, 59), BOX));
        assertEquals(
                2, LineClip.of(Path.closed(30, -9, 60, -9, 60, 59, 30, 59), BOX).size());
    }
}
