package simmerpoint.workshop;

import java.util.IdentityHashMap;
import java.util.stream.DoubleStream;
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
        return DoubleStream.concat(heights(left), heights(right))
                .map(y -> rightmost(left, y) - leftmost(right, y))
                .filter(Double::isFinite)
                .max()
                .orElse(left.width());
    }

    private static DoubleStream heights(Polygon polygon) {
        return polygon.corners().stream().mapToDouble(Point::y);
    }

    private static double rightmost(Polygon polygon, double y) {
        return at(polygon, y).max().orElse(Double.NEGATIVE_INFINITY);
    }

    private static double leftmost(Polygon polygon, double y) {
        return at(polygon, y).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** Where the edges cross a height. */
    private static DoubleStream at(Polygon polygon, double y) {
        DoubleStream.Builder all = DoubleStream.builder();
        for (int k = 0; k < polygon.size(); k++) {
            Point a = polygon.corner(k);
            Point b = polygon.corner(k + 1);
            if (Math.min(a.y(), b.y()) <= y && y <= Math.max(a.y(), b.y())) {
                if (a.y() == b.y()) {
                    all.add(a.x()).add(b.x());
                } else {
                    all.add(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
                }
            }
        }
        return all.build();
    }
}
