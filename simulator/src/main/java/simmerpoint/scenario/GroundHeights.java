package simmerpoint.scenario;

/**
 * How high above level ground things stand: needed by whoever stands dish and pan up outdoors.
 *
 * @param tripodHeightMetres height of the mount, the point the dish turns about, above the ground, above 0
 * @param lowestPanMetres lowest height of the pan's underside above the ground at which one likes to cook, m
 * @param highestPanMetres highest such height, above the lowest, m
 */
public record GroundHeights(double tripodHeightMetres, double lowestPanMetres, double highestPanMetres) {
    /** A mount at 60 cm; cooking from knee height, 40 cm, to breast height, 130 cm (common practice). */
    public static final GroundHeights USUAL = new GroundHeights(0.6, 0.4, 1.3);

    /** Whether one can cook at a pan whose underside stands so high, m. */
    public boolean allows(double panHeightMetres) {
        return panHeightMetres >= lowestPanMetres && panHeightMetres <= highestPanMetres;
    }

    /** Checks the heights. */
    public GroundHeights {
        if (!(tripodHeightMetres > 0 && tripodHeightMetres < 100)) {
            throw new IllegalArgumentException("tripod height " + tripodHeightMetres + " m is not above 0");
        }
        if (!(lowestPanMetres >= 0 && lowestPanMetres < highestPanMetres && highestPanMetres < 100)) {
            throw new IllegalArgumentException(
                    "pan heights " + lowestPanMetres + " m to " + highestPanMetres + " m are not in order");
        }
    }
}
