package simmerpoint.dish.mesh;

/**
 * The outline of one polygon of a mesh, about the mean of its corners, in space and flattened. Flattening drops the
 * coordinate in which the polygon is thinnest and keeps it counter-clockwise: straight lines, order along them and ratios
 * of areas stay as they are.
 */
final class PolygonOutline {
    private final double[] x;
    private final double[] y;
    private final double[] z;
    /** Twice the area times the unit normal: sum of the vector products of neighbouring corners (Newell's rule). */
    private double nx;

    private double ny;
    private double nz;

    private double[] u;
    private double[] v;

    /** Takes polygon {@code k} of {@code mesh}. */
    PolygonOutline(Mesh mesh, int k) {
        int first = mesh.firstCorner()[k];
        int n = mesh.firstCorner()[k + 1] - first;
        x = new double[n];
        y = new double[n];
        z = new double[n];
        for (int i = 0; i < n; i++) {
            int at = 3 * mesh.corners()[first + i];
            x[i] = mesh.vertices()[at];
            y[i] = mesh.vertices()[at + 1];
            z[i] = mesh.vertices()[at + 2];
        }
        centre(x);
        centre(y);
        centre(z);
        addUpNormal();
        flatten();
    }

    /** Number of corners. */
    int size() {
        return x.length;
    }

    /** Area, m². */
    double area() {
        return 0.5 * Math.sqrt(nx * nx + ny * ny + nz * nz);
    }

    /** z component of the unit normal; NaN without area. */
    double normalZ() {
        return 0.5 * nz / area();
    }

    /** Distance of the furthest corner from the mean of all, m. */
    double radius() {
        double most = 0;
        for (int i = 0; i < size(); i++) {
            most = Math.max(most, x[i] * x[i] + y[i] * y[i] + z[i] * z[i]);
        }
        return Math.sqrt(most);
    }

    /** Distance of corner {@code i} from the plane through the mean of the corners, m, at least 0. */
    double offPlane(int i) {
        return 0.5 * Math.abs(x[i] * nx + y[i] * ny + z[i] * nz) / area();
    }

    /** Whether corners {@code i} and {@code j} are at one point. */
    boolean samePoint(int i, int j) {
        return x[i] == x[j] && y[i] == y[j] && z[i] == z[j];
    }

    /** Twice the area of the flattened triangle of corners a, b, c; above 0 if it runs like the polygon. */
    double turn(int a, int b, int c) {
        return (u[b] - u[a]) * (v[c] - v[a]) - (v[b] - v[a]) * (u[c] - u[a]);
    }

    /** Whether no corner turns back and the outline goes round once. */
    boolean isConvex() {
        int n = size();
        int reversals = 0;
        double way = 0;
        double firstWay = 0;
        for (int i = 0; i < n; i++) {
            int j = i + 1 < n ? i + 1 : 0;
            int k = j + 1 < n ? j + 1 : 0;
            if (!(turn(i, j, k) >= 0) || foldsBack(i, j, k)) {
                return false;
            }
            double step = Math.signum(u[j] - u[i]);
            if (step != 0) {
                reversals += way != 0 && step != way ? 1 : 0;
                firstWay = way == 0 ? step : firstWay;
                way = step;
            }
        }
        return reversals + (way != firstWay ? 1 : 0) == 2;
    }

    /** Whether two edges meet anywhere but at the corner they share. Looks at every pair of edges. */
    boolean meetsItself() {
        int n = size();
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            int k = (j + 1) % n;
            if (foldsBack(i, j, k)) {
                return true;
            }
            int last = i == 0 ? n - 1 : n;
            for (int a = i + 2; a < last; a++) {
                if (edgesMeet(i, j, a, (a + 1) % n)) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean foldsBack(int i, int j, int k) {
        return turn(i, j, k) == 0 && along(j, i, k) > 0;
    }

    /** Scalar product of the flattened ways from {@code a} to {@code b} and to {@code c}. */
    private double along(int a, int b, int c) {
        return (u[b] - u[a]) * (u[c] - u[a]) + (v[b] - v[a]) * (v[c] - v[a]);
    }

    private boolean edgesMeet(int a, int b, int c, int d) {
        double cSide = Math.signum(turn(a, b, c));
        double dSide = Math.signum(turn(a, b, d));
        double aSide = Math.signum(turn(c, d, a));
        double bSide = Math.signum(turn(c, d, b));
        return (cSide * dSide < 0 && aSide * bSide < 0)
                || (cSide == 0 && along(c, a, b) <= 0)
                || (dSide == 0 && along(d, a, b) <= 0)
                || (aSide == 0 && along(a, c, d) <= 0)
                || (bSide == 0 && along(b, c, d) <= 0);
    }

    private static void centre(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        for (int i = 0; i < values.length; i++) {
            values[i] -= sum / values.length;
        }
    }

    private void addUpNormal() {
        int n = size();
        for (int i = 0; i < n; i++) {
            int j = i + 1 < n ? i + 1 : 0;
            nx += y[i] * z[j] - z[i] * y[j];
            ny += z[i] * x[j] - x[i] * z[j];
            nz += x[i] * y[j] - y[i] * x[j];
        }
    }

    private void flatten() {
        double ax = Math.abs(nx);
        double ay = Math.abs(ny);
        double az = Math.abs(nz);
        if (az >= ax && az >= ay) {
            u = nz >= 0 ? x : y;
            v = nz >= 0 ? y : x;
        } else if (ax >= ay) {
            u = nx >= 0 ? y : z;
            v = nx >= 0 ? z : y;
        } else {
            u = ny >= 0 ? z : x;
            v = ny >= 0 ? x : z;
        }
    }
}
