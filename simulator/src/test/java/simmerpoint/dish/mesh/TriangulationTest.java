package simmerpoint.dish.mesh;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class TriangulationTest {
    private static final double[][] SQUARE = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
    private static final double[][] ARROW = {{0, 0}, {2, 0}, {2, 2}, {1, 0.5}, {0, 2}};
    private static final double[][] ELL = {{0, 0}, {3, 0}, {3, 1}, {2, 1}, {1, 1}, {1, 3}, {0, 3}, {0, 2}, {0, 1}};
    private static final double[][] SPIRAL = {
        {0, 0}, {6, 0}, {6, 6}, {1, 6}, {1, 2}, {4, 2}, {4, 4}, {3, 4}, {3, 3}, {2, 3}, {2, 5}, {5, 5}, {5, 1}, {0, 1}
    };

    @Test
    void aConvexPolygonBecomesAFan() {
        assertArrayEquals(new int[] {0, 1, 2, 0, 2, 3}, Triangulation.of(Polygons.inPlane(SQUARE, 0.3, -0.2), 0));
        assertTrue(new PolygonOutline(Polygons.inPlane(SQUARE, 0.3, -0.2), 0).isConvex());
    }

    @Test
    void dentedPolygonsAreCoveredOnce() {
        for (double[][] corners : new double[][][] {ARROW, ELL, SPIRAL, comb(20)}) {
            assertFalse(new PolygonOutline(Polygons.inPlane(corners, 0, 0), 0).isConvex());
            assertCovered(corners, 0, 0);
            assertCovered(corners, 0.7, -1.3);
            assertCovered(corners, 50, 20);
            assertCovered(corners, -20, 50);
        }
    }

    /** The other way round, as a mesh that nobody turned: triangles run like their polygon. */
    @Test
    void clockwisePolygonsStayClockwise() {
        double[][] reversed = new double[SPIRAL.length][];
        Arrays.setAll(reversed, i -> SPIRAL[SPIRAL.length - 1 - i]);
        assertCovered(reversed, 0.2, 0.1);
        assertTrue(Polygons.area(triangle(reversed, Triangulation.of(Polygons.inPlane(reversed, 0, 0), 0), 0)) < 0);
    }

    @Test
    void cornersOnAStraightEdgeMakeNoTriangle() {
        double[][] corners = {{0, 0}, {1, 0}, {2, 0}, {2, 2}, {0, 2}, {0, 1}};
        assertTrue(new PolygonOutline(Polygons.inPlane(corners, 0, 0), 0).isConvex());
        assertEquals(3 * 2, Triangulation.of(Polygons.inPlane(corners, 0, 0), 0).length);
        assertCovered(corners, 0.1, 0.1);
    }

    @Test
    void numbersAreThoseOfTheMesh() {
        double[] vertices = {9, 9, 9, 0, 0, 0, 1, 0, 0, 0, 1, 0, 0, 0, 5, 1, 0, 5, 0, 1, 5};
        Mesh mesh = new Mesh("two", vertices, new int[] {1, 2, 3, 4, 5, 6}, new int[] {0, 3, 6});
        assertArrayEquals(new int[] {1, 2, 3}, Triangulation.of(mesh, 0));
        assertArrayEquals(new int[] {4, 5, 6}, Triangulation.of(mesh, 1));
    }

    /** Corners at rising angles and any distance from a point inside: such an outline never meets itself. */
    @Property(seed = "42", tries = 300, edgeCases = EdgeCasesMode.NONE)
    void anyStarIsCoveredOnce(
            @ForAll long random,
            @ForAll @IntRange(min = 3, max = 40) int corners,
            @ForAll @DoubleRange(min = -3, max = 3) double a,
            @ForAll @DoubleRange(min = -3, max = 3) double b) {
        SplittableRandom distances = new SplittableRandom(random);
        double[][] star = new double[corners][];
        Arrays.setAll(star, i -> {
            double angle = 2 * Math.PI * i / corners;
            double distance = 0.05 + distances.nextDouble();
            return new double[] {distance * Math.cos(angle), distance * Math.sin(angle)};
        });
        assertCovered(star, a, b);
    }

    /**
     * The triangles in the plane z = a x + b y run like their polygon, their areas (seen along z) add up to its area, and
     * each of 400 points is in one triangle if it is in the polygon and in none if not.
     */
    private static void assertCovered(double[][] corners, double a, double b) {
        int[] triangles = Triangulation.of(Polygons.inPlane(corners, a, b), 0);
        double area = Polygons.area(corners);
        double sum = 0;
        for (int t = 0; t < triangles.length; t += 3) {
            double part = Polygons.area(triangle(corners, triangles, t));
            assertTrue(part * area > 0, "triangle " + t / 3 + " has area " + part);
            sum += part;
        }
        assertEquals(area, sum, 1e-13 * Math.abs(area));
        assertTrue(triangles.length <= 3 * (corners.length - 2));
        double reach = 1.05
                * Arrays.stream(corners)
                        .flatMapToDouble(Arrays::stream)
                        .map(Math::abs)
                        .max()
                        .orElse(0);
        SplittableRandom points = new SplittableRandom(7);
        for (int i = 0; i < 400; i++) {
            double x = reach * (1 - 2 * points.nextDouble());
            double y = reach * (1 - 2 * points.nextDouble());
            int times = 0;
            for (int t = 0; t < triangles.length; t += 3) {
                times += Polygons.contains(triangle(corners, triangles, t), x, y) ? 1 : 0;
            }
            assertEquals(Polygons.contains(corners, x, y) ? 1 : 0, times, "point " + x + ", " + y);
        }
    }

    private static double[][] triangle(double[][] corners, int[] triangles, int t) {
        return new double[][] {corners[triangles[t]], corners[triangles[t + 1]], corners[triangles[t + 2]]};
    }

    /** A comb with teeth upwards. */
    private static double[][] comb(int teeth) {
        double[][] corners = new double[2 * teeth + 3][];
        corners[0] = new double[] {0, 0};
        corners[1] = new double[] {5, 0};
        for (int i = 0; i <= 2 * teeth; i++) {
            corners[i + 2] = new double[] {5 - 5.0 * i / (2 * teeth), i % 2 == 0 ? 5 : 0.5};
        }
        return corners;
    }
}
