package simmerpoint.study.build;

/**
 * How far the mirror may be off its depth at some distance from the axis.
 *
 * @param radius that distance, m
 * @param metres above or below
 * @param isMore whether more would do; farther was not looked
 */
public record DepthTolerance(double radius, double metres, boolean isMore) {
    /** Share of the watts that it costs if all ribs are off by so much there, by turns two up and two down. */
    public static final double LOSS = DepthTolerances.LOSS;
}
