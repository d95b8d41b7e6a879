package simmerpoint.dish.mesh;

import simmerpoint.geometry.PlanArea;
import simmerpoint.geometry.TriangleTree;

/** What follows from the polygons of a mesh alone, whatever stands where and however the sun shines. Never changes. */
public final class MeshShape {
    /**
     * A dent shallower than this share of the radius is neglected: light is nearly perpendicular to panels, so it
     * blocks a strip about as wide as it is deep.
     */
    static final double HARMLESS_DENT = 1e-4;

    private final MeshTriangles triangles;
    private final PlanHull hull;
    private final TriangleTree tree;
    private final double top;
    private final double steepestSlope;
    private Boolean bowl;
    private double seenArea = Double.NaN;

    MeshShape(Mesh mesh) {
        triangles = new MeshTriangles(mesh);
        hull = new PlanHull(triangles);
        tree = new TriangleTree(triangles.corners, triangles.owner);
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 2; i < triangles.corners.length; i += 3) {
            highest = Math.max(highest, triangles.corners[i]);
        }
        top = highest;
        double least = 1;
        for (int t = 0; t < triangles.count; t++) {
            least = Math.min(least, triangles.normal[3 * t + 2]);
        }
        steepestSlope = Math.acos(least);
    }

    /** The polygons as triangles. */
    public MeshTriangles triangles() {
        return triangles;
    }

    /** The convex outline of all corners in plan. */
    public PlanHull hull() {
        return hull;
    }

    /** The triangles for ray intersection, dish frame; owners are polygons. */
    public TriangleTree tree() {
        return tree;
    }

    /** Height of the highest corner, m. */
    public double top() {
        return top;
    }

    /** Largest angle of a polygon's normal from the axis, rad. */
    public double steepestSlope() {
        return steepestSlope;
    }

    /** Area of the polygons seen along the axis, m²; where one lies behind another it counts once. */
    public synchronized double seenArea() {
        if (Double.isNaN(seenArea)) {
            seenArea = isBowl() ? triangles.totalPlanArea() : new PlanArea(triangles.corners, tree).covered();
        }
        return seenArea;
    }

    /** Whether every panel's plane has all corners above it: then the panels are part of a convex bowl. */
    public synchronized boolean isBowl() {
        if (bowl == null) {
            bowl = everyCornerAboveEveryPlane();
        }
        return bowl;
    }

    private boolean everyCornerAboveEveryPlane() {
        double slack = HARMLESS_DENT * hull.radius();
        for (int t = 0; t < triangles.count; t++) {
            double nx = triangles.normal[3 * t];
            double ny = triangles.normal[3 * t + 1];
            double nz = triangles.normal[3 * t + 2];
            double level =
                    nx * triangles.shape[9 * t] + ny * triangles.shape[9 * t + 1] + nz * triangles.shape[9 * t + 2];
            if (tree.anyCornerBelow(nx, ny, nz, level, slack)) {
                return false;
            }
        }
        return true;
    }
}
