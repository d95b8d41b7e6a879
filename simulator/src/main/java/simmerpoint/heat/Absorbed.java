package simmerpoint.heat;

/**
 * Sunlight that each face of the pan has taken up, direct light included, W; each at least 0.
 *
 * @param undersideWatts by the underside
 * @param wetWallWatts by the wall below the water line
 * @param dryWallWatts by the wall above the water line
 * @param lidWatts by the lid, or, with the lid off, by the water and what is under it
 */
public record Absorbed(double undersideWatts, double wetWallWatts, double dryWallWatts, double lidWatts) {
    /** No sun. */
    public static final Absorbed NOTHING = new Absorbed(0, 0, 0, 0);

    /** Checks all four. */
    public Absorbed {
        Checks.notNegative("absorbed by the underside", undersideWatts, "W");
        Checks.notNegative("absorbed by the wall below the water line", wetWallWatts, "W");
        Checks.notNegative("absorbed by the wall above the water line", dryWallWatts, "W");
        Checks.notNegative("absorbed by the lid", lidWatts, "W");
    }

    /** All of it on the underside. */
    public static Absorbed onUnderside(double watts) {
        return new Absorbed(watts, 0, 0, 0);
    }

    /** All faces together, W. */
    public double total() {
        return undersideWatts + wetWallWatts + dryWallWatts + lidWatts;
    }

    /** The same light, weaker or stronger. */
    public Absorbed times(double factor) {
        return new Absorbed(factor * undersideWatts, factor * wetWallWatts, factor * dryWallWatts, factor * lidWatts);
    }

    /** The same light made so strong that its sum is {@code watts}; all on the underside if there is none yet. */
    public Absorbed scaledTo(double watts) {
        return total() > 0 ? times(watts / total()) : onUnderside(watts);
    }

    /** Both together. */
    public Absorbed plus(Absorbed other) {
        return new Absorbed(
                undersideWatts + other.undersideWatts,
                wetWallWatts + other.wetWallWatts,
                dryWallWatts + other.dryWallWatts,
                lidWatts + other.lidWatts);
    }
}
