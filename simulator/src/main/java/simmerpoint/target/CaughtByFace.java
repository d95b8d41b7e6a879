package simmerpoint.target;

/**
 * Caught light by face, with the relative absorptance of its rays: the mean of {@link simmerpoint.pan.GrazingAbsorptance} at
 * each ray's angle, weighted with watts; 1 where there is no light.
 *
 * @param underside W on the underside or disc
 * @param undersideAbsorptance relative absorptance there
 * @param wallByHeight W on equal bands of the wall, from the underside up; empty for a bare disc
 * @param wallAbsorbableByHeight the same light, each ray times its relative absorptance, W
 * @param lid W on the lid
 * @param lidAbsorptance relative absorptance there
 */
public record CaughtByFace(
        double underside,
        double undersideAbsorptance,
        double[] wallByHeight,
        double[] wallAbsorbableByHeight,
        double lid,
        double lidAbsorptance) {
    /** Share of the wall's light below {@code height}, as a share (0 to 1) of the wall's height; 0 without light. */
    public double wallShareBelow(double height) {
        double all = wallWatts();
        return all > 0 ? below(wallByHeight, height) / all : 0;
    }

    /** Light on the wall, W. */
    public double wallWatts() {
        return below(wallByHeight, 1);
    }

    /** Relative absorptance of the wall's light below {@code height}, a share of the wall's. */
    public double wallAbsorptanceBelow(double height) {
        return ratio(below(wallAbsorbableByHeight, height), below(wallByHeight, height));
    }

    /** Relative absorptance of the wall's light above {@code height}. */
    public double wallAbsorptanceAbove(double height) {
        double absorbable = below(wallAbsorbableByHeight, 1) - below(wallAbsorbableByHeight, height);
        return ratio(absorbable, wallWatts() - below(wallByHeight, height));
    }

    private static double ratio(double absorbable, double watts) {
        return watts > 0 ? Math.max(0, Math.min(1, absorbable / watts)) : 1;
    }

    private static double below(double[] bands, double height) {
        double sum = 0;
        for (int j = 0; j < bands.length; j++) {
            sum += Math.max(0, Math.min(1, height * bands.length - j)) * bands[j];
        }
        return sum;
    }
}
