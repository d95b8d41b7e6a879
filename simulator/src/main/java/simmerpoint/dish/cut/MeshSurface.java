package simmerpoint.dish.cut;

import java.util.Optional;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mesh.MeshShape;
import simmerpoint.dish.mesh.MeshTriangles;
import simmerpoint.dish.mesh.PlanHull;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.TriangleTree;
import simmerpoint.geometry.Vec;

/**
 * Flat polygons of a mesh. Points are sampled on the panels, in the order of the file; the outline is the convex hull
 * of all corners in plan. Where panels do not fill it, a sixteenth of the points measures the gaps: a point is in a gap
 * if a ray from the sun's centre through it meets no panel.
 */
final class MeshSurface implements MirrorSurface {
    private static final double GAP_SHARE = 1.0 / 16;
    private static final double FULL = 1e-9;

    private static final double FAR = 1e5;

    private final MeshShape shape;
    private final MeshTriangles triangles;
    private final PlanHull hull;
    private final TriangleTree tree;
    private final Vec sun;
    private final double gapShare;
    private final int panels;
    private final boolean mayHide;

    MeshSurface(Mesh mesh, Direction sunInDish) {
        shape = mesh.shape();
        triangles = shape.triangles();
        hull = shape.hull();
        tree = shape.tree();
        sun = sunInDish.vec();
        panels = mesh.polygons();
        double all = shape.seenArea();
        boolean full = shape.isBowl() && Math.abs(all - hull.area) <= FULL * hull.area;
        gapShare = full ? 0 : GAP_SHARE;
        double offAxis = Math.acos(Math.max(-1, Math.min(1, sun.z())));
        mayHide = shape.steepestSlope() + offAxis > 1.4 || !shape.isBowl();
    }

    @Override
    public double outlineArea() {
        return hull.area;
    }

    @Override
    public double apertureArea() {
        return shape.seenArea();
    }

    @Override
    public int panels() {
        return panels;
    }

    @Override
    public double steepestSlope() {
        return shape.steepestSlope();
    }

    @Override
    public double radius() {
        return hull.radius();
    }

    @Override
    public double heightAt(double x, double y) {
        TriangleTree.Query query = tree.new Query();
        if (!query.anyHit(x, y, shape.top() + 1, 0, 0, -1, 0, FAR, -1)) {
            return Double.NEGATIVE_INFINITY;
        }
        double low = 0;
        double high = FAR;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (query.anyHit(x, y, shape.top() + 1, 0, 0, -1, 0, middle, -1)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return shape.top() + 1 - high;
    }

    @Override
    public Optional<TriangleTree> blockingPanels() {
        return mayHide ? Optional.of(tree) : Optional.empty();
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        TriangleTree.Query query = gapShare > 0 ? tree.new Query() : null;
        double area = triangles.totalPlanArea() / (1 - gapShare);
        double perShare = triangles.count / (1 - gapShare);
        double all = triangles.totalPlanArea();
        for (int i = 0; i < n; i++) {
            if (u[i] < gapShare) {
                probeGap(u[i] / gapShare, v[i], i, out, query);
                continue;
            }
            double place = (u[i] - gapShare) * perShare;
            int t = triangles.guide[(int) place];
            double level = place * all / triangles.count;
            while (t < triangles.count - 1 && triangles.planArea[t + 1] <= level) {
                t++;
            }
            double from = triangles.planArea[t];
            double share = Math.min(1, Math.max(0, (level - from) / (triangles.planArea[t + 1] - from)));
            double within = Math.sqrt(share);
            drop(t, within * (1 - v[i]), within * v[i], i, out);
            out.area[i] = area / triangles.normal[3 * t + 2];
        }
    }

    private void drop(int t, double a, double b, int i, MirrorPoints out) {
        double[] s = triangles.shape;
        int at = 9 * t;
        out.x[i] = s[at] + a * s[at + 3] + b * s[at + 6];
        out.y[i] = s[at + 1] + a * s[at + 4] + b * s[at + 7];
        out.z[i] = s[at + 2] + a * s[at + 5] + b * s[at + 8];
        out.nx[i] = triangles.normal[3 * t];
        out.ny[i] = triangles.normal[3 * t + 1];
        out.nz[i] = triangles.normal[3 * t + 2];
        out.panel[i] = triangles.owner[t];
    }

    private void probeGap(double u, double v, int i, MirrorPoints out, TriangleTree.Query query) {
        hull.place(u, v, out.x, out.y, i);
        out.z[i] = shape.top();
        out.nx[i] = 0;
        out.ny[i] = 0;
        out.nz[i] = 1;
        out.panel[i] = MirrorPoints.GAP;
        boolean mirror = query.anyHit(out.x[i], out.y[i], out.z[i], -sun.x(), -sun.y(), -sun.z(), -FAR, FAR, -1);
        out.area[i] = mirror ? 0 : hull.area / gapShare;
    }
}
