package simmerpoint.dish.points;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.geometry.euclidean.twod.hull.MonotoneChain;
import simmerpoint.geometry.EnclosingCircle;
import simmerpoint.geometry.Point;

/**
 * The convex outline of points in plan. Places are drawn evenly from it line by line: the first number says how far up, in proportion to the
 * area below, the second where across.
 */
final class ConvexOutline {
    private static final double SAME = 1e-12;
    private static final int GUIDE = 1 << 12;

    /** Corners, counter-clockwise. */
    final List<Point> corners;
    /** Area, m². */
    final double area;

    private final double[] x;
    private final double[] low;
    private final double[] high;
    private final double[] below;
    private final int[] guide = new int[GUIDE + 1];

    ConvexOutline(MeasuredPoints points) {
        corners = hull(points);
        x = new TreeSet<>(corners.stream().map(Point::x).toList())
                .stream().mapToDouble(Double::doubleValue).toArray();
        low = new double[x.length];
        high = new double[x.length];
        below = new double[x.length];
        for (int k = 0; k < x.length; k++) {
            chord(k);
            if (k > 0) {
                below[k] = below[k - 1] + (x[k] - x[k - 1]) * (high[k] - low[k] + high[k - 1] - low[k - 1]) / 2;
            }
        }
        area = below[x.length - 1];
        for (int g = 0, k = 0; g <= GUIDE; g++) {
            while (k < x.length - 2 && below[k + 1] * GUIDE <= g * area) {
                k++;
            }
            guide[g] = k;
        }
    }

    private static List<Point> hull(MeasuredPoints points) {
        List<Vector2D> all = new ArrayList<>(points.count());
        for (int i = 0; i < points.count(); i++) {
            all.add(new Vector2D(points.x()[i], points.y()[i]));
        }
        return new MonotoneChain(false, SAME)
                .findHullVertices(all).stream()
                        .map(v -> new Point(v.getX(), v.getY()))
                        .toList();
    }

    /** Where the line across at the k-th corner enters and leaves. */
    private void chord(int k) {
        low[k] = Double.POSITIVE_INFINITY;
        high[k] = Double.NEGATIVE_INFINITY;
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            Point a = corners.get(j);
            Point b = corners.get(i);
            if (Math.min(a.x(), b.x()) <= x[k] && Math.max(a.x(), b.x()) >= x[k]) {
                double share = a.x() == b.x() ? 0 : (x[k] - a.x()) / (b.x() - a.x());
                double y = a.y() + share * (b.y() - a.y());
                low[k] = Math.min(low[k], a.x() == b.x() ? Math.min(a.y(), b.y()) : y);
                high[k] = Math.max(high[k], a.x() == b.x() ? Math.max(a.y(), b.y()) : y);
            }
        }
    }

    /** The smallest circle about it: x and y of its middle and its radius, m. */
    double[] circle() {
        return EnclosingCircle.of(corners);
    }

    /** Whether a place lies in it. */
    boolean contains(double atX, double atY) {
        if (!(atX >= x[0] && atX <= x[x.length - 1])) {
            return false;
        }
        int k = 0;
        while (k < x.length - 2 && x[k + 1] < atX) {
            k++;
        }
        double share = (atX - x[k]) / (x[k + 1] - x[k]);
        return atY >= low[k] + share * (low[k + 1] - low[k]) && atY <= high[k] + share * (high[k + 1] - high[k]);
    }

    /** Puts the place for a pair of numbers of the unit square into place {@code i} of two arrays, m. */
    void place(double u, double v, double[] toX, double[] toY, int i) {
        double wanted = u * area;
        int k = guide[(int) (u * GUIDE)];
        while (k < x.length - 2 && below[k + 1] <= wanted) {
            k++;
        }
        double from = high[k] - low[k];
        double grows = high[k + 1] - low[k + 1] - from;
        double wide = x[k + 1] - x[k];
        // The area from here on, (from + grows·s/2)·s·wide, is to be what is still wanted: the smaller root, without
        // cancellation.
        double rest = 2 * (wanted - below[k]) / wide;
        double share = Math.min(1, rest / (from + Math.sqrt(Math.max(0, from * from + grows * rest))));
        toX[i] = x[k] + share * wide;
        double bottom = low[k] + share * (low[k + 1] - low[k]);
        toY[i] = bottom + v * (from + share * grows);
    }
}
