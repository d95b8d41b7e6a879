package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a circle leaves of a polygon, against areas from plane geometry, derived here. */
class DiscClipTest {
    private static DiscClip square(double from, double to, double radius) {
        return new DiscClip(new double[] {from, to, to, from}, new double[] {from, from, to, to}, radius);
    }

    /** From the middle out, a square of the circle's radius holds a quarter of the circle. */
    @Test
    void aQuarterOfACircle() {
        assertEquals(Math.PI / 4, square(0, 1, 1).area(), 1e-12);
    }

    /** Four corners are cut off: the circle less four segments, ½(φ − sin φ) each with cos(φ/2) = 0.8. */
    @Test
    void aSquareWithRoundedCorners() {
        double angle = 2 * Math.acos(0.8);
        double wanted = Math.PI - 2 * (angle - Math.sin(angle));
        DiscClip clip = square(-0.8, 0.8, 1);
        assertEquals(wanted, clip.area(), 1e-12);
        List<double[]> corners = clip.corners();
        double twice = 0;
        for (int k = 0; k < corners.size(); k++) {
            double[] a = corners.get(k);
            double[] b = corners.get((k + 1) % corners.size());
            assertTrue(Math.hypot(a[0], a[1]) < 1 + 1e-12, "within the circle");
            twice += a[0] * b[1] - b[0] * a[1];
        }
        assertEquals(wanted, twice / 2, 1e-5);
    }

    @Test
    void aPolygonInsideStaysWhole() {
        assertEquals(0.04, square(0.1, 0.3, 1).area(), 1e-12);
        assertEquals(4, square(0.1, 0.3, 1).corners().size());
    }

    @Test
    void ofAPolygonOutsideNothingIsLeft() {
        assertEquals(0, square(0.9, 1.3, 1).area(), 0);
    }
}
