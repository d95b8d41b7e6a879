package simmerpoint.heat.losses;

/**
 * Losses of the pan, W; a term below 0 is a gain.
 *
 * @param convectionWatts into the air
 * @param radiationWatts to sky and surroundings
 * @param steamWatts as vapour: latent heat
 */
public record Losses(double convectionWatts, double radiationWatts, double steamWatts) {
    /** No loss. */
    public static final Losses NONE = new Losses(0, 0, 0);

    /** All three together, W. */
    public double total() {
        return convectionWatts + radiationWatts + steamWatts;
    }

    /** Convection and radiation, W. */
    public double dry() {
        return convectionWatts + radiationWatts;
    }

    /** The sum with other losses. */
    public Losses plus(Losses other) {
        return new Losses(
                convectionWatts + other.convectionWatts,
                radiationWatts + other.radiationWatts,
                steamWatts + other.steamWatts);
    }

    /** All times a factor. */
    Losses times(double factor) {
        return new Losses(factor * convectionWatts, factor * radiationWatts, factor * steamWatts);
    }

    /** The same with another steam term. */
    public Losses withSteam(double watts) {
        return new Losses(convectionWatts, radiationWatts, watts);
    }
}
