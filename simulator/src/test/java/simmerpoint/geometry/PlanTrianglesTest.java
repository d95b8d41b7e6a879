package simmerpoint.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.twod.Euclidean2D;
import org.apache.commons.math3.geometry.euclidean.twod.PolygonsSet;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.geometry.partitioning.Region;
import org.apache.commons.math3.geometry.partitioning.RegionFactory;
import org.junit.jupiter.api.Test;

class PlanTrianglesTest {
    private static final double TOLERANCE = 1e-12;

    /** Against the binary space partitions of Apache Commons Math. */
    @Test
    void theCommonPartIsThatOfAnotherLibrary() {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            double[] corners = new double[18];
            for (int i = 0; i < 18; i++) {
                corners[i] = random.nextDouble();
            }
            Region<?> common = new RegionFactory<Euclidean2D>().intersection(region(corners, 0), region(corners, 1));
            assertEquals(common.getSize(), PlanTriangles.overlap(corners, 0, 1).area(), 1e-9, "round " + round);
        }
    }

    @Test
    void neighboursHaveNothingInCommon() {
        double[] corners = {0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 0, 0, 1, 1, 0, 0, 1, 0};
        assertEquals(0, PlanTriangles.overlap(corners, 0, 1).area());
    }

    private static PolygonsSet region(double[] corners, int t) {
        Vector2D[] points = new Vector2D[3];
        for (int k = 0; k < 3; k++) {
            points[k] = new Vector2D(corners[9 * t + 3 * k], corners[9 * t + 3 * k + 1]);
        }
        double turn = points[1].subtract(points[0]).getX()
                        * points[2].subtract(points[0]).getY()
                - points[1].subtract(points[0]).getY()
                        * points[2].subtract(points[0]).getX();
        return turn > 0
                ? new PolygonsSet(TOLERANCE, points[0], points[1], points[2])
                : new PolygonsSet(TOLERANCE, points[0], points[2], points[1]);
    }
}
