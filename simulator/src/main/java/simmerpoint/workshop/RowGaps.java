package simmerpoint.workshop;

import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.stream.Stream;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;

/**
 * How near two pieces can lie side by side. Both edges are made of straight parts, so that the gap between them is least at a
 * corner of one of them.
 */
final class RowGaps {
    private final IdentityHashMap<Polygon, IdentityHashMap<Polygon, Double>> known = new IdentityHashMap<>();

    /** The shift along x after which {@code next} touches {@code last} on its right; both lie at the origin, the same objects again and again. */
    double leastShift(Polygon last, Polygon next) {
        return known.computeIfAbsent(last, left -> new IdentityHashMap<>())
                .computeIfAbsent(next, right -> shift(last, right));
    }

    private static double shift(Polygon left, Polygon right) {
        double[] heights = Stream.of(left, right)
                .flatMap(polygon -> polygon.corners().stream())
                .mapToDouble(Point::y)
                .sorted()
                .toArray();
        double[] rightmost = rightmost(left, heights, 1);
        double[] leftmost = rightmost(right, heights, -1);
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < heights.length; k++) {
            most = Math.max(most, rightmost[k] + leftmost[k]);
        }
        return Double.isFinite(most) ? most : left.width();
    }

    /** The greatest side·x at which the edges cross each of the heights, lowest first; minus infinity where none does. */
    private static double[] rightmost(Polygon polygon, double[] heights, int side) {
        double[] most = new double[heights.length];
        Arrays.fill(most, Double.NEGATIVE_INFINITY);
        for (int k = 0; k < polygon.size(); k++) {
            Point a = polygon.corner(k);
            Point b = polygon.corner(k + 1);
            double top = Math.max(a.y(), b.y());
            for (int h = first(heights, Math.min(a.y(), b.y())); h < heights.length && heights[h] <= top; h++) {
                most[h] = Math.max(most[h], crossing(a, b, heights[h], side));
            }
        }
        return most;
    }

    /** The first of the heights that is no lower than that. */
    private static int first(double[] heights, double least) {
        int from = Arrays.binarySearch(heights, least);
        while (from > 0 && heights[from - 1] == least) {
            from--;
        }
        return from < 0 ? -from - 1 : from;
    }

    private static double crossing(Point a, Point b, double y, int side) {
        return a.y() == b.y()
                ? Math.max(side * a.x(), side * b.x())
                : side * (a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
    }
}
