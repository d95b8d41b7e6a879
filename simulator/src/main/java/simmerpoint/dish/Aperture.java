package simmerpoint.dish;

/**
 * The circle about all mirrors of a dish, seen along its axis; dish frame, m.
 *
 * @param x of its middle, towards the dish's upper edge
 * @param y of its middle
 * @param radius above 0
 */
public record Aperture(double x, double y, double radius) {
    private static final double BESIDE = 0.1;

    /** A circle about the axis. */
    public static Aperture about(double radius) {
        return new Aperture(0, 0, radius);
    }

    /** Whether a place lies in it. */
    public boolean contains(double atX, double atY) {
        return Math.hypot(atX - x, atY - y) <= radius;
    }

    /** Whether it clearly lies beside the axis and not about it. */
    public boolean isBesideAxis() {
        return Math.hypot(x, y) > BESIDE * radius;
    }

    /** Largest distance from the axis. */
    public double reach() {
        return Math.hypot(x, y) + radius;
    }
}
