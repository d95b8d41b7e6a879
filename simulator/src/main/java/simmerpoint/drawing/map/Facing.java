package simmerpoint.drawing.map;

import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;

/** Which way a map's axes run on a drawing. */
public enum Facing {
    /** Second axis to the right, first axis downwards: a pan's underside, the sun's side at the upper edge. */
    FIRST_DOWN,
    /** Second axis to the right, first axis upwards: a bare disc, seen from the dish. */
    FIRST_UP,
    /** First axis to the right, second axis upwards: an unrolled wall, seen from outside. */
    FIRST_RIGHT;

    /** How underside or disc of {@code target} is shown. */
    static Facing of(Target target) {
        return target instanceof Pan ? FIRST_DOWN : FIRST_UP;
    }
}
