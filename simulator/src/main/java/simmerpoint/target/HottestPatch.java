package simmerpoint.target;

/**
 * The patch of adjacent cells with the highest mean flux less its standard error. The standard error is subtracted because
 * a maximum over noisy values is biased high, the more so the smaller the patch.
 */
public final class HottestPatch {
    private HottestPatch() {}

    /**
     * Mean flux of the hottest patch less its standard error, W/m²; 0 for a dark map or one smaller than a patch.
     *
     * @param map where to look
     * @param columns of a patch
     * @param rows of a patch
     * @param allRound whether the columns are periodic, as those of a wall are
     */
    public static double of(FluxMap map, int columns, int rows, boolean allRound) {
        double most = 0;
        int cells = columns * rows;
        int starts = allRound ? map.columns() : map.columns() - columns + 1;
        for (int j = 0; j + rows <= map.rows(); j++) {
            for (int i = 0; i < starts; i++) {
                double sum = sum(map.flux(), map.columns(), i, j, columns, rows);
                if (sum > most * cells) {
                    most = Math.max(most, (sum - error(map, i, j, columns, rows)) / cells);
                }
            }
        }
        return most;
    }

    private static double sum(double[] flux, int round, int left, int low, int columns, int rows) {
        double sum = 0;
        for (int j = low; j < low + rows; j++) {
            for (int i = left; i < left + columns; i++) {
                sum += flux[j * round + (i < round ? i : i - round)];
            }
        }
        return sum;
    }

    private static double error(FluxMap map, int left, int low, int columns, int rows) {
        double variance = 0;
        for (int j = low; j < low + rows; j++) {
            for (int i = left; i < left + columns; i++) {
                double error = map.standardError()[j * map.columns() + i % map.columns()];
                variance += error * error;
            }
        }
        return Math.sqrt(variance);
    }
}
