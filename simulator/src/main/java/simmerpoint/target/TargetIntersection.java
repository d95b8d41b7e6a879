package simmerpoint.target;

import java.util.OptionalDouble;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;

/** Where single rays end on a target, for drawings. */
public final class TargetIntersection {
    private final Cylinder body;

    /** Of a pan or a bare disc. */
    public TargetIntersection(Target target) {
        double height = target instanceof Pan pan ? pan.heightMetres() : 0;
        body = new Cylinder(target.radiusMetres(), height, !(target instanceof Pan));
    }

    /**
     * How far a ray goes until the target stops it; empty if it goes past.
     *
     * @param from where it begins, target frame, m
     * @param direction unit
     */
    public OptionalDouble reach(Vec from, Vec direction) {
        int met = body.meet(from.x(), from.y(), from.z(), direction.x(), direction.y(), direction.z());
        return met == Cylinder.NOTHING ? OptionalDouble.empty() : OptionalDouble.of(body.reach);
    }
}
