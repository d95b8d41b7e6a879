package simmerpoint.dish.mesh;

import java.util.stream.IntStream;

/** Meshes of one polygon for tests, and plane geometry the long way. */
public final class Polygons {
    private Polygons() {}

    /** The polygon with corners (x, y), y first squeezed into the plane z = a x + b y. */
    public static Mesh inPlane(double[][] corners, double a, double b) {
        double[] vertices = new double[3 * corners.length];
        for (int i = 0; i < corners.length; i++) {
            vertices[3 * i] = corners[i][0];
            vertices[3 * i + 1] = corners[i][1];
            vertices[3 * i + 2] = a * corners[i][0] + b * corners[i][1];
        }
        int[] numbers = IntStream.range(0, corners.length).toArray();
        return new Mesh("polygon", vertices, numbers, new int[] {0, corners.length});
    }

    /** Signed area by the shoelace rule. */
    public static double area(double[][] corners) {
        double sum = 0;
        for (int i = 0; i < corners.length; i++) {
            double[] p = corners[i];
            double[] q = corners[(i + 1) % corners.length];
            sum += p[0] * q[1] - q[0] * p[1];
        }
        return sum / 2;
    }

    /** Whether (x, y) is inside, by counting the edges that a ray towards +x crosses. */
    public static boolean contains(double[][] corners, double x, double y) {
        boolean inside = false;
        for (int i = 0, j = corners.length - 1; i < corners.length; j = i++) {
            double[] p = corners[i];
            double[] q = corners[j];
            if (p[1] > y != q[1] > y && x < (q[0] - p[0]) * (y - p[1]) / (q[1] - p[1]) + p[0]) {
                inside = !inside;
            }
        }
        return inside;
    }
}
