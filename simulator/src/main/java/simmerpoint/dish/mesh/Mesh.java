package simmerpoint.dish.mesh;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import simmerpoint.geometry.Vec;

/**
 * Flat convex or concave polygons of a mesh in the dish frame, already checked: every polygon has at least three
 * corners, is plane and has area. The arrays are shared and not modified.
 */
public final class Mesh {
    private final String name;
    private final double[] vertices;
    private final int[] corners;
    private final int[] firstCorner;
    private MeshShape shape;

    /**
     * Takes the arrays, which are not copied.
     *
     * @param name what to call the mesh in messages, for instance its file name
     * @param vertices x, y, z of vertex i at 3i, 3i + 1, 3i + 2, m
     * @param corners vertex numbers of all polygons one after another
     * @param firstCorner polygon k owns corners[firstCorner[k]] to corners[firstCorner[k + 1] − 1]; length = polygons + 1
     */
    public Mesh(String name, double[] vertices, int[] corners, int[] firstCorner) {
        this.name = name;
        this.vertices = vertices;
        this.corners = corners;
        this.firstCorner = firstCorner;
    }

    /** What to call it in messages. */
    public String name() {
        return name;
    }

    /** x, y, z of vertex i at 3i, 3i + 1, 3i + 2, m. */
    public double[] vertices() {
        return vertices;
    }

    /** Vertex numbers of all polygons one after another. */
    public int[] corners() {
        return corners;
    }

    /** Where the corners of each polygon begin, and the end of the last; length = polygons + 1. */
    public int[] firstCorner() {
        return firstCorner;
    }

    /** Its triangles and what follows from them: worked out once, however many dishes and aims ask for it. */
    public synchronized MeshShape shape() {
        if (shape == null) {
            shape = new MeshShape(this);
        }
        return shape;
    }

    /** Number of polygons. */
    public int polygons() {
        return firstCorner.length - 1;
    }

    /** Largest distance from the axis of a corner that a polygon uses, m. */
    public double reach() {
        double largest = 0;
        for (int corner : corners) {
            largest = Math.max(largest, Math.hypot(vertices[3 * corner], vertices[3 * corner + 1]));
        }
        return largest;
    }

    /** Corners of polygon {@code k}, counter-clockwise seen from +z. */
    public List<Vec> polygonFromAbove(int k) {
        List<Vec> points = new ArrayList<>();
        for (int c = firstCorner[k]; c < firstCorner[k + 1]; c++) {
            int at = 3 * corners[c];
            points.add(new Vec(vertices[at], vertices[at + 1], vertices[at + 2]));
        }
        double twiceArea = 0;
        for (int i = 0, j = points.size() - 1; i < points.size(); j = i++) {
            twiceArea += points.get(j).x() * points.get(i).y()
                    - points.get(i).x() * points.get(j).y();
        }
        if (twiceArea < 0) {
            Collections.reverse(points);
        }
        return points;
    }
}
