package simmerpoint.dish.mesh;

/** The focal length of a mesh, from its panels alone. */
public final class MeshFocus {
    private MeshFocus() {}

    /**
     * Focal length f of the paraboloid whose slopes r/2f come closest to those of the panels, m: least squares over the
     * panels' triangles at their centres, weighted with their plan area, f = Σ r² ÷ (2 Σ r·slope), slope the one along
     * the radius (derived here). Infinite or below 0 where the panels do not concentrate light.
     */
    public static double focalLength(Mesh mesh) {
        MeshTriangles triangles = mesh.shape().triangles();
        double squares = 0;
        double products = 0;
        for (int t = 0; t < triangles.count; t++) {
            double weight = triangles.planArea[t + 1] - triangles.planArea[t];
            double x = middle(triangles.corners, 9 * t);
            double y = middle(triangles.corners, 9 * t + 1);
            squares += weight * (x * x + y * y);
            products -= weight
                    * (triangles.normal[3 * t] * x + triangles.normal[3 * t + 1] * y)
                    / triangles.normal[3 * t + 2];
        }
        return squares / (2 * products);
    }

    private static double middle(double[] corners, int at) {
        return (corners[at] + corners[at + 3] + corners[at + 6]) / 3;
    }
}
