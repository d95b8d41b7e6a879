package simmerpoint.dish.points;

import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;

/**
 * Height and slopes at any place by a quadratic through the nearest points: weighted least squares of what they differ from the best
 * paraboloid (moving least squares: D. Levin, The approximation power of moving least squares, Mathematics of Computation 67 (1998)
 * 1517–1531, from memory: error of the slopes of second order in the points' distance). A paraboloid comes out exactly. Where the points
 * leave a direction open a small ridge takes the differences there as none. Not thread-safe.
 */
final class LocalQuadratic {
    private static final int TERMS = 6;
    private static final int POINTS = 14;
    private static final double RIDGE = 1e-9;
    private static final double REACH = 1.3;

    private final MeasuredPoints points;
    private final BestParaboloid best;
    private final double[] rest;
    private final NearestPoints.Search search;
    private final LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(TERMS);
    private final DMatrixRMaj normal = new DMatrixRMaj(TERMS, TERMS);
    private final DMatrixRMaj right = new DMatrixRMaj(TERMS, 1);
    private final DMatrixRMaj found = new DMatrixRMaj(TERMS, 1);
    private final double[] row = new double[TERMS];

    LocalQuadratic(MeasuredPoints points, BestParaboloid best, NearestPoints near) {
        this.points = points;
        this.best = best;
        rest = best.rest(points);
        search = near.new Search(POINTS + 1);
    }

    /** Height, slope along x and slope along y at a place, without the point of that number; −1 for none. */
    void at(double x, double y, int without, double[] out) {
        search.near(x, y);
        fit(x, y, without);
        double curve = 1 / (2 * best.focalLength());
        double scale = reach();
        out[0] = best.heightAt(x, y) + found.get(0);
        out[1] = curve * (x - best.vertexX()) + found.get(1) / scale;
        out[2] = curve * (y - best.vertexY()) + found.get(2) / scale;
    }

    /** Distance of the k-th nearest point from the last place, m. */
    double distance(int k) {
        return Math.sqrt(search.square[Math.min(k, search.square.length - 1)]);
    }

    /** The point nearest to the last place. */
    int nearest() {
        return search.found[0];
    }

    private double reach() {
        return REACH * Math.sqrt(search.square[search.square.length - 1]);
    }

    private void fit(double x, double y, int without) {
        normal.zero();
        right.zero();
        double scale = reach();
        for (int k = 0; k < search.found.length; k++) {
            int i = search.found[k];
            if (i == without) {
                continue;
            }
            double dx = (points.x()[i] - x) / scale;
            double dy = (points.y()[i] - y) / scale;
            double near = 1 - (dx * dx + dy * dy);
            add(dx, dy, near * near, rest[i]);
        }
        for (int a = 1; a < TERMS; a++) {
            normal.add(a, a, RIDGE * normal.get(0, 0));
        }
        if (!solver.setA(normal)) {
            throw new IllegalStateException("a place without points");
        }
        solver.solve(right, found);
    }

    private void add(double dx, double dy, double weight, double value) {
        row[0] = 1;
        row[1] = dx;
        row[2] = dy;
        row[3] = dx * dx;
        row[4] = dx * dy;
        row[5] = dy * dy;
        for (int a = 0; a < TERMS; a++) {
            double w = weight * row[a];
            for (int b = 0; b < TERMS; b++) {
                normal.add(a, b, w * row[b]);
            }
            right.add(a, 0, w * value);
        }
    }
}
