package simmerpoint.target;

import java.util.OptionalDouble;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Target;

/** Where single rays hit a target, for drawings. */
public final class TargetIntersection {
    private final Cylinder body;

    /** For a pan or a bare disc. */
    public TargetIntersection(Target target) {
        body = Cylinder.of(target);
    }

    /**
     * Distance from {@code from} to the target along a ray, m; empty if the ray misses it.
     *
     * @param from start of the ray, target frame, m
     * @param direction unit
     */
    public OptionalDouble distance(Vec from, Vec direction) {
        int face = body.intersect(from.x(), from.y(), from.z(), direction.x(), direction.y(), direction.z());
        return face == Cylinder.NOTHING ? OptionalDouble.empty() : OptionalDouble.of(body.rayParameter);
    }
}
