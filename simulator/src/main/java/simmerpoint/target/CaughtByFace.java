package simmerpoint.target;

/**
 * Caught light by face, with its mean cosine of incidence (weighted with watts; 1 where there is no light), for absorptance
 * that depends on the angle.
 *
 * @param underside W on the underside or disc
 * @param undersideCosine its mean cosine
 * @param wallByHeight W on equal bands of the wall, from the underside up; empty for a bare disc
 * @param wallCosine mean cosine on the wall
 * @param lid W on the lid
 * @param lidCosine mean cosine on the lid
 */
public record CaughtByFace(
        double underside,
        double undersideCosine,
        double[] wallByHeight,
        double wallCosine,
        double lid,
        double lidCosine) {
    /** Share of the wall's light below {@code height}, as a share (0 to 1) of the wall's height; 0 without light. */
    public double wallShareBelow(double height) {
        double all = 0;
        double below = 0;
        for (int j = 0; j < wallByHeight.length; j++) {
            double covered = Math.max(0, Math.min(1, height * wallByHeight.length - j));
            all += wallByHeight[j];
            below += covered * wallByHeight[j];
        }
        return all > 0 ? below / all : 0;
    }
}
