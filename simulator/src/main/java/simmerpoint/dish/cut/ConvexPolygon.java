package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.geometry.Point;

/** Convex polygons in plan, corners counter-clockwise. */
final class ConvexPolygon {
    /** Corners nearer than this are one, m². */
    private static final double SAME2 = 1e-24;

    private ConvexPolygon() {}

    /** Whether a place lies inside or on the edge. */
    static boolean contains(List<Point> corners, double x, double y) {
        for (int k = 0, n = corners.size(); k < n; k++) {
            Point a = corners.get(k);
            Point b = corners.get(k + 1 == n ? 0 : k + 1);
            if ((b.x() - a.x()) * (y - a.y()) - (b.y() - a.y()) * (x - a.x()) < 0) {
                return false;
            }
        }
        return true;
    }

    /** What of a polygon, convex or nearly so, lies in a convex one: cut along each of its sides in turn (Sutherland and Hodgman 1974). */
    static List<Point> common(List<Point> polygon, List<Point> convex) {
        List<Point> rest = polygon;
        for (int k = 0; k < convex.size() && !rest.isEmpty(); k++) {
            rest = leftOf(rest, convex.get(k), convex.get((k + 1) % convex.size()));
        }
        return rest.size() < 3 ? List.of() : rest;
    }

    private static List<Point> leftOf(List<Point> polygon, Point a, Point b) {
        List<Point> kept = new ArrayList<>();
        for (int k = 0; k < polygon.size(); k++) {
            Point p = polygon.get(k);
            Point q = polygon.get((k + 1) % polygon.size());
            double here = left(a, b, p);
            double there = left(a, b, q);
            if (here >= 0) {
                add(kept, p);
            }
            if ((here > 0 && there < 0) || (here < 0 && there > 0)) {
                double share = here / (here - there);
                add(kept, new Point(p.x() + share * (q.x() - p.x()), p.y() + share * (q.y() - p.y())));
            }
        }
        if (kept.size() > 1 && isSame(kept.get(0), kept.get(kept.size() - 1))) {
            kept.remove(kept.size() - 1);
        }
        return kept;
    }

    private static void add(List<Point> kept, Point p) {
        if (kept.isEmpty() || !isSame(kept.get(kept.size() - 1), p)) {
            kept.add(p);
        }
    }

    private static boolean isSame(Point a, Point b) {
        double dx = a.x() - b.x();
        double dy = a.y() - b.y();
        return dx * dx + dy * dy < SAME2;
    }

    private static double left(Point a, Point b, Point p) {
        return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
    }
}
