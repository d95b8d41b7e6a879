package simmerpoint.truth;

/** Overlap of plane figures with a disc about the origin, in closed form (elementary geometry, derived here). */
final class DiscOverlap {
    private DiscOverlap() {}

    /** Area of a polygon, m²; positive if its corners run anticlockwise. */
    static double area(double[] x, double[] y) {
        double twice = 0;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            twice += x[j] * y[i] - x[i] * y[j];
        }
        return twice / 2;
    }

    /** Signed area of the part of a polygon within {@code radius} of the origin; positive as in {@link #area}. */
    static double areaWithin(double[] x, double[] y, double radius) {
        double sum = 0;
        for (int i = 0, j = x.length - 1; i < x.length; j = i++) {
            sum += edge(x[j], y[j], x[i], y[i], radius);
        }
        return sum;
    }

    /** Share of the segment from a to b within {@code radius} of the origin, 0 to 1. */
    static double shareWithin(double ax, double ay, double bx, double by, double radius) {
        double dx = bx - ax;
        double dy = by - ay;
        double length2 = dx * dx + dy * dy;
        if (length2 == 0) {
            return ax * ax + ay * ay <= radius * radius ? 1 : 0;
        }
        double middle = -(ax * dx + ay * dy) / length2;
        double cross = ax * dy - ay * dx;
        double half2 = (radius * radius - cross * cross / length2) / length2;
        if (half2 <= 0) {
            return 0;
        }
        double half = Math.sqrt(half2);
        return Math.max(0, Math.min(1, middle + half) - Math.max(0, middle - half));
    }

    /** Signed area of (triangle origin, a, b) ∩ disc: the edge is split where it meets the circle. */
    private static double edge(double ax, double ay, double bx, double by, double radius) {
        double dx = bx - ax;
        double dy = by - ay;
        double length2 = dx * dx + dy * dy;
        if (length2 == 0) {
            return 0;
        }
        double cross = ax * by - ay * bx;
        double half2 = (radius * radius - cross * cross / length2) / length2;
        if (half2 <= 0) {
            return sector(ax, ay, bx, by, radius);
        }
        double middle = -(ax * dx + ay * dy) / length2;
        double from = Math.min(1, Math.max(0, middle - Math.sqrt(half2)));
        double to = Math.min(1, Math.max(0, middle + Math.sqrt(half2)));
        double px = ax + from * dx;
        double py = ay + from * dy;
        double qx = ax + to * dx;
        double qy = ay + to * dy;
        return sector(ax, ay, px, py, radius) + (px * qy - py * qx) / 2 + sector(qx, qy, bx, by, radius);
    }

    private static double sector(double ax, double ay, double bx, double by, double radius) {
        return radius * radius / 2 * Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    }
}
