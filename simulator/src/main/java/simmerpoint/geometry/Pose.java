package simmerpoint.geometry;

/**
 * Position and orientation of a frame in its parent frame.
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

    /** The pose of this frame in the parent of {@code parent}, the frame it is given in now. */
    public Pose in(Pose parent) {
        return new Pose(parent.rotation.after(rotation), parent.toParent(origin));
    }

    /** The pose of the parent in this frame. */
    public Pose inverse() {
        Rotation back = rotation.inverse();
        return new Pose(back, back.apply(origin).times(-1));
    }
}
