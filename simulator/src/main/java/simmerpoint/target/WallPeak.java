package simmerpoint.target;

/**
 * The hottest place of a wall as its map shows it: three cells side by side, less one standard error. The largest single cell
 * would be biased high, the more the fewer rays there are; a square of cells would be biased low, since light on a wall falls
 * off within a centimetre or two of its lower edge. Whatever says how hot a wall in a picture gets, says this.
 */
public final class WallPeak {
    private static final int CELLS = 3;

    private WallPeak() {}

    /** Mean flux of the hottest three cells of an unrolled wall less its standard error, W/m²; 0 for a dark wall. */
    public static double of(FluxMap wall) {
        return HottestPatch.of(wall, CELLS, 1, true);
    }
}
