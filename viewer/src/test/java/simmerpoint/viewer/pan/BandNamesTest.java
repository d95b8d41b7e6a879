package simmerpoint.viewer.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class BandNamesTest {
    private static final CurveFrame FRAME = new CurveFrame(0, 1, 100, 20, 200, 100);

    private static BandNames.Curve line(double... ys) {
        double[] xs = new double[ys.length];
        for (int k = 0; k < xs.length; k++) {
            xs[k] = 100 + 200.0 * k / (xs.length - 1);
        }
        return new BandNames.Curve(xs, ys);
    }

    private static double place(BandNames.Obstacle... obstacles) {
        return new BandNames(null, FRAME, 0, List.of(obstacles)).place(190, 210, 40);
    }

    @Test
    void aCurveCrossesABoxWhereverItRunsThroughIt() {
        BandNames.Curve peak = line(100, 30, 100);
        assertTrue(peak.crosses(190, 25, 210, 40));
        // The peak itself lies between the ends of the box.
        assertFalse(peak.crosses(190, 60, 210, 80));
        assertTrue(peak.crosses(120, 70, 130, 90));
        assertFalse(peak.crosses(120, 30, 130, 60));
        assertTrue(BandNames.Obstacle.mark(200, 50, 7).crosses(206, 40, 230, 60));
        assertFalse(BandNames.Obstacle.mark(200, 50, 7).crosses(208, 40, 230, 60));
    }

    @Test
    void aNameStandsAboveOrElseBelowTheCurves() {
        assertEquals(25, place());
        assertEquals(25, place(line(100, 100, 100)));
        assertEquals(75, place(line(30, 30, 30)));
        double between = place(line(24, 24, 24), line(110, 110, 110));
        assertTrue(between > 28 && between + 40 < 106, "at " + between);
        // Nowhere is free: it stays on top, with its rim.
        assertEquals(25, place(line(50, 50, 50), line(90, 90, 90)));
    }
}
