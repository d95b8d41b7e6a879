package simmerpoint.dish.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.geometry.euclidean.twod.hull.MonotoneChain;
import simmerpoint.geometry.EnclosingCircle;
import simmerpoint.geometry.Point;

/** Convex outline in plan, and points drawn evenly from it. */
public final class PlanHull {
    private final double[] x;
    private final double[] y;
    /** Running share of the area of the fan's triangles about the first corner. */
    private final double[] share;

    /** Area in plan, m². */
    public final double area;

    private double[] circle;

    PlanHull(MeshTriangles triangles) {
        List<Vector2D> points = new ArrayList<>();
        for (int i = 0; i < triangles.corners.length; i += 3) {
            points.add(new Vector2D(triangles.corners[i], triangles.corners[i + 1]));
        }
        List<Vector2D> hull = new ArrayList<>(new MonotoneChain(false, 1e-12).findHullVertices(points));
        x = hull.stream().mapToDouble(Vector2D::getX).toArray();
        y = hull.stream().mapToDouble(Vector2D::getY).toArray();
        share = new double[Math.max(1, x.length - 1)];
        for (int k = 1; k < share.length; k++) {
            share[k] = share[k - 1] + 0.5 * ((x[k] - x[0]) * (y[k + 1] - y[0]) - (x[k + 1] - x[0]) * (y[k] - y[0]));
        }
        area = share[share.length - 1];
        for (int k = 0; k < share.length; k++) {
            share[k] /= area;
        }
    }

    /** The smallest circle about the outline: x and y of its middle and its radius, m. The array is not modified. */
    public synchronized double[] circle() {
        if (circle == null) {
            circle = smallestCircle();
        }
        return circle;
    }

    private double[] smallestCircle() {
        return EnclosingCircle.of(IntStream.range(0, x.length)
                .mapToObj(k -> new Point(x[k], y[k]))
                .toList());
    }

    /** Largest distance of the outline from the origin, m. */
    public double radius() {
        double max = 0;
        for (int k = 0; k < x.length; k++) {
            max = Math.max(max, Math.hypot(x[k], y[k]));
        }
        return max;
    }

    /** Puts the point for a pair of numbers of the unit square into place {@code i} of two arrays, m. */
    public void place(double u, double v, double[] toX, double[] toY, int i) {
        int k = 1;
        while (k < share.length - 1 && u >= share[k]) {
            k++;
        }
        double within = Math.sqrt(Math.max(0, Math.min(1, (u - share[k - 1]) / (share[k] - share[k - 1]))));
        double a = within * (1 - v);
        double b = within * v;
        toX[i] = x[0] + a * (x[k] - x[0]) + b * (x[k + 1] - x[0]);
        toY[i] = y[0] + a * (y[k] - y[0]) + b * (y[k + 1] - y[0]);
    }
}
