package simmerpoint.dish.cut;

/** Small sums over polygons in plan. */
final class PlanPolygon {
    private PlanPolygon() {}

    /** Distance of the origin from the polygon; 0 if it lies inside. */
    static double distanceFromOrigin(double[] x, double[] y) {
        double nearest = Double.POSITIVE_INFINITY;
        boolean inside = false;
        for (int k = 0, l = x.length - 1; k < x.length; l = k++) {
            if ((y[k] > 0) != (y[l] > 0) && 0 < x[k] - y[k] * (x[l] - x[k]) / (y[l] - y[k])) {
                inside = !inside;
            }
            nearest = Math.min(nearest, distanceToSide(x[k], y[k], x[l], y[l]));
        }
        return inside ? 0 : nearest;
    }

    private static double distanceToSide(double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        double along = -(ax * dx + ay * dy) / (dx * dx + dy * dy);
        double t = Math.max(0, Math.min(1, along));
        return Math.hypot(ax + t * dx, ay + t * dy);
    }
}
