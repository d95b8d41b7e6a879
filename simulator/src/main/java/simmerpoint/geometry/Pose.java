package simmerpoint.geometry;

/**
 * Where a frame stands in another one, its parent.
 *
 * @param rotation takes directions of this frame to directions of the parent
 * @param origin of this frame, in the parent, m
 */
public record Pose(Rotation rotation, Vec origin) {
    /** A point of this frame, in the parent. */
    public Vec toParent(Vec point) {
        return rotation.apply(point).plus(origin);
    }

    /** A point of the parent, in this frame. */
    public Vec fromParent(Vec point) {
        return rotation.inverse().apply(point.minus(origin));
    }

    /** This frame's parent is {@code middle}'s frame: the pose of this frame in {@code middle}'s parent. */
    public Pose in(Pose middle) {
        return new Pose(middle.rotation.after(rotation), middle.toParent(origin));
    }

    /** The pose of the parent in this frame. */
    public Pose inverse() {
        Rotation back = rotation.inverse();
        return new Pose(back, back.apply(origin).times(-1));
    }
}
