package simmerpoint.setup;

/**
 * The moves of the pan's centre (of its underside, or of the bare disc) away from the focus, in the well-aimed dish. They
 * add. See {@link Setup} for the directions.
 *
 * @param pullBackMetres along the axis, positive away from the dish
 * @param slideMetres the dish is slid back along the ground, away from the sun
 * @param raiseMetres the pan is raised
 * @param sideMetres along +y
 */
public record Stand(double pullBackMetres, double slideMetres, double raiseMetres, double sideMetres) {
    /** The pan's centre at the focus. */
    public static final Stand AT_FOCUS = new Stand(0, 0, 0, 0);
}
