package simmerpoint.study.build;

/**
 * How far a dish may be off its plan in one way until that alone costs {@link #LOSS} of the watts.
 *
 * @param place what is off, where
 * @param span length over which it is measured, m; 0 where the place says it
 * @param metres how far
 * @param isMore whether more would do; farther was not looked
 */
public record ShapeTolerance(Place place, double span, double metres, boolean isMore) {
    /** Share of the watts that a tolerance costs. */
    public static final double LOSS = 0.05;

    /** What may be off. */
    public enum Place {
        /** Sheet that hangs between two ribs, midway at the rim, the dish on its back. */
        SHEET_HANGING,
        /** Sheet or film that stands out there towards the light. */
        SHEET_BULGING,
        /** The depth of the middle below a straight edge across the rim: too little. */
        DEPTH,
        /** Two corners of the rim too high, the other two too low. */
        TWIST,
        /** The rim nearer to the axis all round. */
        RIM,
        /** One side of a panel against the opposite one, at random: two standard deviations. */
        PANEL_SIDE,
        /** Waves and dents, at random: two standard deviations over the span. */
        WAVES
    }
}
