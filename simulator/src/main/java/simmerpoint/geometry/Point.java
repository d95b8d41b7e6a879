package simmerpoint.geometry;

/**
 * A point in a plane.
 *
 * @param x metres
 * @param y metres
 */
public record Point(double x, double y) {
    /** Distance from another, m. */
    public double distance(Point other) {
        return Math.hypot(x - other.x, y - other.y);
    }
}
