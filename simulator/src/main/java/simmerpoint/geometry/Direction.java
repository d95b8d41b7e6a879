package simmerpoint.geometry;

/**
 * A vector of length 1. The factories make the length so; nobody who receives a direction normalises it again.
 *
 * @param vec the components, of length 1 to rounding
 */
public record Direction(Vec vec) {
    /** The +x axis. */
    public static final Direction X = new Direction(new Vec(1, 0, 0));
    /** The +y axis. */
    public static final Direction Y = new Direction(new Vec(0, 1, 0));
    /** The +z axis. */
    public static final Direction Z = new Direction(new Vec(0, 0, 1));

    /** Refuses a vector whose length is not 1 within 1e-9. */
    public Direction {
        if (!(Math.abs(vec.length() - 1) < 1e-9)) {
            throw new IllegalArgumentException("a direction has length 1, not " + vec.length());
        }
    }

    /** The direction of {@code v}; refuses the null vector and NaN. */
    public static Direction of(Vec v) {
        double length = v.length();
        if (!(length > 0)) {
            throw new IllegalArgumentException("no direction in " + v);
        }
        return new Direction(v.times(1 / length));
    }

    /**
     * The direction reached from +z by going {@code angle towards +x} and {@code towards +y} along one great circle:
     * both are parts of the angle to +z (rad), so (u, s) and their exact opposite are mirror images.
     */
    public static Direction offZ(double towardsX, double towardsY) {
        double angle = Math.hypot(towardsX, towardsY);
        if (angle == 0) {
            return Z;
        }
        double k = Math.sin(angle) / angle;
        return of(new Vec(k * towardsX, k * towardsY, Math.cos(angle)));
    }

    /** Scalar product with another direction: the cosine of the angle between them. */
    public double dot(Direction b) {
        return vec.dot(b.vec);
    }
}
