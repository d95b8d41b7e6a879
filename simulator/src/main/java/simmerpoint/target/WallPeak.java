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
        double most = 0;
        for (int j = 0; j < wall.rows(); j++) {
            for (int i = 0; i < wall.columns(); i++) {
                most = Math.max(most, from(wall, i, j));
            }
        }
        return most;
    }

    private static double from(FluxMap wall, int i, int j) {
        double sum = 0;
        double variance = 0;
        for (int k = 0; k < CELLS; k++) {
            int cell = j * wall.columns() + (i + k) % wall.columns();
            sum += wall.flux()[cell];
            variance += wall.standardError()[cell] * wall.standardError()[cell];
        }
        return (sum - Math.sqrt(variance)) / CELLS;
    }
}
