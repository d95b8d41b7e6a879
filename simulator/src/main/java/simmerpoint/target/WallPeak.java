package simmerpoint.target;

/**
 * Peak flux of a wall: three adjacent cells of one row, less one standard error. The largest single cell would be biased
 * high, the more so the fewer rays there are; a square of cells would be biased low, since light on a wall falls off within
 * a centimetre or two of its lower edge. All texts and pictures use this figure.
 */
public final class WallPeak {
    private static final int CELLS = 3;

    private WallPeak() {}

    /** Mean flux of the hottest three cells of an unrolled wall less its standard error, W/m²; 0 for a dark wall. */
    public static double of(FluxMap wall) {
        return HottestPatch.of(wall, CELLS, 1, true);
    }
}
