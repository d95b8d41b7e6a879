package simmerpoint.viewer.pan;

import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;

/** Which way a map's axes run on the screen; the same as in the pictures that are written. */
enum Facing {
    /** Second axis to the right, first axis downwards: a pan's underside, the sun's side at the upper edge. */
    FIRST_DOWN,
    /** Second axis to the right, first axis upwards: a bare disc, seen from the dish. */
    FIRST_UP,
    /** First axis to the right, second axis upwards: an unrolled wall, seen from outside. */
    FIRST_RIGHT;

    /** How the underside or disc of {@code scenario} is shown. */
    static Facing of(Scenario scenario) {
        return scenario.target() instanceof Pan ? FIRST_DOWN : FIRST_UP;
    }
}
