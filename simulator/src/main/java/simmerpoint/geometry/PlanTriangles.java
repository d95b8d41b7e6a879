package simmerpoint.geometry;

/** Triangles seen along z. */
public final class PlanTriangles {
    private static final Overlap NONE = new Overlap(0, 0, 0);

    private PlanTriangles() {}

    /**
     * What two triangles have in common in plan.
     *
     * @param area m²
     * @param x of its middle, m
     * @param y of its middle, m
     */
    public record Overlap(double area, double x, double y) {}

    /**
     * The common part of triangles {@code a} and {@code b}: the first is cut along each side of the other (Sutherland and
     * Hodgman 1974, Communications of the ACM 17(1) 32-42, from memory).
     *
     * @param corners nine numbers per triangle: three corners, x y z in turn, m
     */
    public static Overlap overlap(double[] corners, int a, int b) {
        if (apart(corners, a, b) || apart(corners, b, a)) {
            return NONE;
        }
        double[] x = {corners[9 * a], corners[9 * a + 3], corners[9 * a + 6], 0, 0, 0, 0};
        double[] y = {corners[9 * a + 1], corners[9 * a + 4], corners[9 * a + 7], 0, 0, 0, 0};
        double turn = turn(corners, b);
        int n = 3;
        for (int edge = 0; edge < 3 && n > 0; edge++) {
            n = cut(x, y, n, corners, b, edge, turn);
        }
        return n < 3 ? NONE : middle(x, y, n);
    }

    /** Whether a side of {@code t} has {@code other} beyond it: neighbours with a side in common, most of the time. */
    private static boolean apart(double[] corners, int t, int other) {
        double turn = turn(corners, t);
        for (int edge = 0; edge < 3; edge++) {
            double most = Double.NEGATIVE_INFINITY;
            for (int at = 9 * other; at < 9 * other + 9; at += 3) {
                most = Math.max(most, turn * side(corners, t, edge, corners[at], corners[at + 1]));
            }
            if (most <= 0) {
                return true;
            }
        }
        return false;
    }

    /** 1 if the corners run counter-clockwise in plan, else −1. */
    private static double turn(double[] corners, int t) {
        return Math.signum(side(corners, t, 0, corners[9 * t + 6], corners[9 * t + 7]));
    }

    /** Twice the area of the triangle from a side of {@code t} to a point: above 0 to the left of the side. */
    private static double side(double[] corners, int t, int edge, double x, double y) {
        int from = 9 * t + 3 * edge;
        int to = 9 * t + 3 * ((edge + 1) % 3);
        return (corners[to] - corners[from]) * (y - corners[from + 1])
                - (corners[to + 1] - corners[from + 1]) * (x - corners[from]);
    }

    private static int cut(double[] x, double[] y, int n, double[] corners, int t, int edge, double turn) {
        double[] oldX = x.clone();
        double[] oldY = y.clone();
        int kept = 0;
        for (int i = 0, j = n - 1; i < n; j = i++) {
            double here = turn * side(corners, t, edge, oldX[i], oldY[i]);
            double before = turn * side(corners, t, edge, oldX[j], oldY[j]);
            if (here > 0 != before > 0) {
                double share = before / (before - here);
                x[kept] = oldX[j] + share * (oldX[i] - oldX[j]);
                y[kept++] = oldY[j] + share * (oldY[i] - oldY[j]);
            }
            if (here > 0) {
                x[kept] = oldX[i];
                y[kept++] = oldY[i];
            }
        }
        return kept;
    }

    private static Overlap middle(double[] x, double[] y, int n) {
        double twice = 0;
        double sumX = 0;
        double sumY = 0;
        for (int i = 0; i < n; i++) {
            sumX += x[i] / n;
            sumY += y[i] / n;
            int j = (i + 1) % n;
            twice += (x[i] - x[0]) * (y[j] - y[0]) - (x[j] - x[0]) * (y[i] - y[0]);
        }
        return new Overlap(0.5 * Math.abs(twice), sumX, sumY);
    }
}
