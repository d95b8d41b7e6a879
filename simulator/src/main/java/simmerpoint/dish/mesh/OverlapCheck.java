package simmerpoint.dish.mesh;

import java.nio.file.Path;
import java.util.Locale;
import simmerpoint.geometry.PlanTriangles;
import simmerpoint.geometry.TriangleTree;
import simmerpoint.input.InputFileException;

/**
 * Refuses polygons that lie on one another: the same panel twice, a sheet exported with both its sides, two layers that
 * touch. Light would land on each of them and count twice. Panels farther apart than that shade each other as they do in
 * the sun, and are fine.
 */
final class OverlapCheck {
    /** Overlaps smaller than this share of the smaller triangle are neighbours whose corners were rounded. */
    private static final double SMALL = 1e-3;

    private final Path file;
    private final MeshBuilder builder;
    private final MeshTriangles triangles;
    private final TriangleTree tree;
    private final double touching;

    OverlapCheck(Path file, Mesh mesh, MeshBuilder builder) {
        this.file = file;
        this.builder = builder;
        triangles = mesh.shape().triangles();
        tree = mesh.shape().tree();
        // Twice what the test for a bowl overlooks: whatever lies closer could pass there as one layer.
        touching = 2 * MeshShape.HARMLESS_DENT * mesh.shape().hull().radius();
    }

    /** Looks at every pair of polygons that come near each other. */
    void check() throws InputFileException {
        double[] box = new double[6];
        for (int t = 0; t < triangles.count; t++) {
            box(t, box);
            int first = t;
            int other = tree.firstNear(box, near -> near < first && overlap(first, near));
            if (other >= 0) {
                throw overlapping(triangles.owner[other], triangles.owner[t]);
            }
        }
    }

    private void box(int t, double[] box) {
        for (int a = 0; a < 3; a++) {
            double slack = a == 2 ? touching : 0;
            double[] c = triangles.corners;
            int at = 9 * t + a;
            box[a] = Math.min(Math.min(c[at], c[at + 3]), c[at + 6]) - slack;
            box[3 + a] = Math.max(Math.max(c[at], c[at + 3]), c[at + 6]) + slack;
        }
    }

    private boolean overlap(int a, int b) {
        if (triangles.owner[a] == triangles.owner[b]) {
            return false;
        }
        double smaller = Math.min(area(a), area(b));
        PlanTriangles.Overlap common = PlanTriangles.overlap(triangles.corners, a, b);
        return common.area() > SMALL * smaller
                && Math.abs(height(a, common.x(), common.y()) - height(b, common.x(), common.y())) <= touching;
    }

    private double area(int t) {
        return triangles.planArea[t + 1] - triangles.planArea[t];
    }

    /** Height of a triangle's plane, m. */
    private double height(int t, double x, double y) {
        double[] n = triangles.normal;
        double[] c = triangles.corners;
        double across = n[3 * t] * (x - c[9 * t]) + n[3 * t + 1] * (y - c[9 * t + 1]);
        return c[9 * t + 2] - across / n[3 * t + 2];
    }

    private InputFileException overlapping(int one, int other) {
        int low = Math.min(builder.line(one), builder.line(other));
        int high = Math.max(builder.line(one), builder.line(other));
        return new InputFileException(
                file,
                high,
                String.format(
                        Locale.ROOT,
                        "this polygon lies on that of line %d, closer than %.2g mm along the axis, so that light would"
                                + " count twice; keep one of them.",
                        low,
                        1e3 * touching));
    }
}
