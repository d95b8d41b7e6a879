package simmerpoint.target;

/**
 * The hottest place of a wall: a square of three cells by three, about 2 cm on a usual pan, less one standard error. The largest
 * single cell would be biased high, the more the fewer rays there are. Whatever tells how hot a wall gets tells this.
 */
public final class WallPeak {
    private WallPeak() {}

    /** Mean flux of the hottest square of an unrolled wall less its standard error, W/m²; 0 for a dark wall. */
    public static double of(FluxMap wall) {
        double most = 0;
        for (int j = 1; j + 1 < wall.rows(); j++) {
            for (int i = 0; i < wall.columns(); i++) {
                most = Math.max(most, square(wall, i, j));
            }
        }
        return most;
    }

    private static double square(FluxMap wall, int i, int j) {
        double sum = 0;
        double variance = 0;
        for (int dj = -1; dj <= 1; dj++) {
            for (int di = -1; di <= 1; di++) {
                int cell = (j + dj) * wall.columns() + Math.floorMod(i + di, wall.columns());
                sum += wall.flux()[cell];
                variance += wall.standardError()[cell] * wall.standardError()[cell];
            }
        }
        return (sum - Math.sqrt(variance)) / 9;
    }
}
