package simmerpoint.study.light;

import simmerpoint.geometry.Vec;

/**
 * The way of one traced ray, well-aimed frame, m.
 *
 * @param towardsSun unit direction to the place on the sun that it comes from
 * @param mirror where it meets the mirror, or would if the target let it through
 * @param end where it ends: on the target, or somewhere beyond the focus if it goes past
 * @param fate what becomes of it
 */
public record RayPath(Vec towardsSun, Vec mirror, Vec end, Fate fate) {
    /** What becomes of a ray. */
    public enum Fate {
        /** Reflected, and caught by the target. */
        CAUGHT,
        /** Reflected, and gone past. */
        MISSED,
        /** Stopped by the target before it came to the mirror. */
        SHADED
    }
}
