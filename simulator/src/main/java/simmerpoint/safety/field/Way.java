package simmerpoint.safety.field;

/** Ways from the focus into the yard, by their angle from the axis; the light past the focus goes no wider than the rim angle. */
public enum Way {
    /** Along the axis, away from the dish: past the pan, towards the sun. */
    AXIS,
    /** Away from the dish, off the axis, as far out as the light goes: where it reaches farthest. */
    RIM,
    /** To the sides of the focus. */
    SIDE,
    /** Towards the dish. */
    DISH
}
