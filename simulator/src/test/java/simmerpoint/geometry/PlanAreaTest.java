package simmerpoint.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class PlanAreaTest {
    @Test
    void ofTheSameTriangleTwiceOneCounts() {
        double[] corners = {0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 5, 0, 1, 5, 1, 0, 5};
        assertEquals(0.5, covered(corners), 1e-15);
    }

    @Test
    void ofATriangleWithinAnotherTheLargerCounts() {
        double[] inside = {0.1, 0.1, 2, 0.3, 0.1, 2, 0.1, 0.3, 2, 0, 0, 0, 1, 0, 0, 0, 1, 0};
        double[] around = {0, 0, 0, 1, 0, 0, 0, 1, 0, 0.1, 0.1, 2, 0.3, 0.1, 2, 0.1, 0.3, 2};
        assertEquals(0.5, covered(inside), 1e-15);
        assertEquals(0.5, covered(around), 1e-15);
    }

    @Test
    void trianglesSideBySideAddUp() {
        double[] corners = {0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 0, 0, 1, 1, 3, 0, 1, 0};
        assertEquals(1, covered(corners), 1e-15);
    }

    /** Against the union of shapes of java.awt.geom, which goes by curves and not by pieces. */
    @Test
    void randomTrianglesCoverWhatTheirUnionDoes() {
        SplittableRandom random = new SplittableRandom(5);
        for (int trial = 0; trial < 50; trial++) {
            double[] corners = random.doubles(9L * (2 + trial % 12)).toArray();
            assertEquals(unionArea(corners), covered(corners), 1e-9, "trial " + trial);
        }
    }

    private static double covered(double[] corners) {
        int[] owner = new int[corners.length / 9];
        for (int t = 0; t < owner.length; t++) {
            owner[t] = t;
        }
        return new PlanArea(corners, new TriangleTree(corners, owner)).covered();
    }

    private static double unionArea(double[] corners) {
        Area all = new Area();
        for (int at = 0; at < corners.length; at += 9) {
            Path2D path = new Path2D.Double();
            path.moveTo(corners[at], corners[at + 1]);
            path.lineTo(corners[at + 3], corners[at + 4]);
            path.lineTo(corners[at + 6], corners[at + 7]);
            path.closePath();
            all.add(new Area(path));
        }
        return enclosed(all.getPathIterator(null));
    }

    /** Shoelace formula over all loops; holes run the other way. */
    private static double enclosed(PathIterator path) {
        double twice = 0;
        double[] start = new double[2];
        double[] last = new double[2];
        double[] next = new double[6];
        for (; !path.isDone(); path.next()) {
            int kind = path.currentSegment(next);
            double[] to = kind == PathIterator.SEG_CLOSE ? start.clone() : new double[] {next[0], next[1]};
            if (kind == PathIterator.SEG_MOVETO) {
                start = to;
            } else {
                twice += last[0] * to[1] - to[0] * last[1];
            }
            last = to;
        }
        return 0.5 * Math.abs(twice);
    }
}
