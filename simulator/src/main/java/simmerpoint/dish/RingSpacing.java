package simmerpoint.dish;

/** Where the borders between rings lie along the rib, from the hub's radius to the rim's. */
public enum RingSpacing {
    /** Rings of equal width in plan; for a parabola the depth of the cut under each chord is then equal too. */
    EQUAL_WIDTH,
    /** Rings that each rise by the same height. */
    EQUAL_DEPTH_STEP,
    /** Rings of equal length measured along the curved rib. */
    EQUAL_LENGTH
}
