package simmerpoint.dish.mesh;

import java.util.Arrays;

/** A mesh under construction, with the line number of every polygon in its file. */
final class MeshBuilder {
    private double[] coordinates = new double[3 * 1024];
    private int vertices;
    private int[] corners = new int[4 * 1024];
    private int[] firstCorner = new int[1024];
    private int[] lines = new int[1024];
    private int polygons;
    private int cornersOfOpenPolygon;

    /** Adds a vertex, m. */
    void vertex(double x, double y, double z) {
        if (3 * vertices == coordinates.length) {
            coordinates = Arrays.copyOf(coordinates, 2 * coordinates.length);
        }
        coordinates[3 * vertices] = x;
        coordinates[3 * vertices + 1] = y;
        coordinates[3 * vertices + 2] = z;
        vertices++;
    }

    /** Adds a corner to the polygon that is being read. */
    void corner(int vertex) {
        int end = firstCorner[polygons] + cornersOfOpenPolygon;
        if (end == corners.length) {
            corners = Arrays.copyOf(corners, 2 * end);
        }
        corners[end] = vertex;
        cornersOfOpenPolygon++;
    }

    /** Ends the polygon that is being read, from line number {@code line}. */
    void endPolygon(int line) {
        if (polygons + 2 > firstCorner.length) {
            firstCorner = Arrays.copyOf(firstCorner, 2 * firstCorner.length);
            lines = Arrays.copyOf(lines, firstCorner.length);
        }
        lines[polygons] = line;
        firstCorner[polygons + 1] = firstCorner[polygons] + cornersOfOpenPolygon;
        polygons++;
        cornersOfOpenPolygon = 0;
    }

    /** Vertices so far. */
    int vertices() {
        return vertices;
    }

    /** Polygons so far. */
    int polygons() {
        return polygons;
    }

    /** Line of the file that polygon {@code k} came from. */
    int line(int k) {
        return lines[k];
    }

    /** All that was added, in arrays of the right length. */
    Mesh mesh(String name) {
        return new Mesh(
                name,
                Arrays.copyOf(coordinates, 3 * vertices),
                Arrays.copyOf(corners, firstCorner[polygons]),
                Arrays.copyOf(firstCorner, polygons + 1));
    }
}
