package simmerpoint.dish.mesh;

/**
 * Flat convex or concave polygons of a mesh in the dish frame, checked by whoever read them: every polygon has at least
 * three corners, is plane and has area. The arrays are not copied; nobody changes them.
 *
 * @param name what to call the mesh in messages, for instance its file name
 * @param vertices x, y, z of vertex i at 3i, 3i + 1, 3i + 2, m
 * @param corners vertex numbers of all polygons one after another
 * @param firstCorner polygon k owns corners[firstCorner[k]] to corners[firstCorner[k + 1] − 1]; length = polygons + 1
 */
public record Mesh(String name, double[] vertices, int[] corners, int[] firstCorner) {
    /** Number of polygons. */
    public int polygons() {
        return firstCorner.length - 1;
    }
}
