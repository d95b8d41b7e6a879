package simmerpoint.dish.mesh;

/** The polygons of a mesh as triangles that face +z, each with its normal and plan area. */
public final class MeshTriangles {
    /** How many. */
    public final int count;
    /** Nine numbers per triangle: a corner and the two sides from it. */
    public final double[] shape;
    /** Three numbers per triangle: unit normal, z above 0. */
    public final double[] normal;
    /** Panel per triangle. */
    public final int[] owner;
    /** Nine numbers per triangle: its corners. */
    public final double[] corners;
    /** Running sum of plan areas, m²; {@code count + 1} entries. */
    public final double[] planArea;
    /** Entry g: the triangle in which the share g ÷ {@code count} of all plan area lies; a first guess for searching. */
    public final int[] guide;

    /** Of all polygons of {@code mesh}. */
    public MeshTriangles(Mesh mesh) {
        int[][] perPolygon = new int[mesh.polygons()][];
        int n = 0;
        for (int k = 0; k < perPolygon.length; k++) {
            perPolygon[k] = Triangulation.of(mesh, k);
            n += perPolygon[k].length / 3;
        }
        count = n;
        shape = new double[9 * n];
        corners = new double[9 * n];
        normal = new double[3 * n];
        owner = new int[n];
        planArea = new double[n + 1];
        int t = 0;
        for (int k = 0; k < perPolygon.length; k++) {
            for (int i = 0; i < perPolygon[k].length; i += 3) {
                owner[t] = k;
                lay(t++, mesh.vertices(), perPolygon[k], i);
            }
        }
        guide = guide();
    }

    private int[] guide() {
        int[] first = new int[count + 1];
        for (int g = 0, t = 0; g < first.length; g++) {
            while (t < count - 1 && planArea[t + 1] * count <= g * totalPlanArea()) {
                t++;
            }
            first[g] = t;
        }
        return first;
    }

    private void lay(int t, double[] vertices, int[] triangle, int at) {
        for (int c = 0; c < 3; c++) {
            System.arraycopy(vertices, 3 * triangle[at + c], corners, 9 * t + 3 * c, 3);
        }
        for (int a = 0; a < 3; a++) {
            shape[9 * t + a] = corners[9 * t + a];
            shape[9 * t + 3 + a] = corners[9 * t + 3 + a] - corners[9 * t + a];
            shape[9 * t + 6 + a] = corners[9 * t + 6 + a] - corners[9 * t + a];
        }
        int s = 9 * t + 3;
        double nx = shape[s + 1] * shape[s + 5] - shape[s + 2] * shape[s + 4];
        double ny = shape[s + 2] * shape[s + 3] - shape[s] * shape[s + 5];
        double nz = shape[s] * shape[s + 4] - shape[s + 1] * shape[s + 3];
        double scale = Math.signum(nz) / Math.sqrt(nx * nx + ny * ny + nz * nz);
        normal[3 * t] = nx * scale;
        normal[3 * t + 1] = ny * scale;
        normal[3 * t + 2] = nz * scale;
        planArea[t + 1] = planArea[t] + 0.5 * Math.abs(nz);
    }

    /** Plan area of all, m². */
    public double totalPlanArea() {
        return planArea[count];
    }
}
