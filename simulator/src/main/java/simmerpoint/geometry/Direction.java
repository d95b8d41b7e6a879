package simmerpoint.geometry;

/**
 * A unit vector. The factories normalise; receivers need not.
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
     * The direction at the angle √(towardsX² + towardsY²) from +z (rad), tilted towards (towardsX, towardsY). Opposite
     * arguments give directions that are mirror images about +z.
     */
    public static Direction tiltedFromZ(double towardsX, double towardsY) {
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
