package simmerpoint.heat;

/**
 * Sunlight absorbed by each face of the pan, direct light included, W; each at least 0.
 *
 * @param undersideWatts by the underside
 * @param wetWallWatts by the wall below the water line
 * @param dryWallWatts by the wall above the water line
 * @param lidWatts by the lid and, through glass or with the lid off, by the water and what is under it
 */
public record AbsorbedLight(double undersideWatts, double wetWallWatts, double dryWallWatts, double lidWatts) {
    /** No sun. */
    public static final AbsorbedLight NOTHING = new AbsorbedLight(0, 0, 0, 0);

    /** Checks all four. */
    public AbsorbedLight {
        ArgumentChecks.notNegative("absorbed by the underside", undersideWatts, "W");
        ArgumentChecks.notNegative("absorbed by the wall below the water line", wetWallWatts, "W");
        ArgumentChecks.notNegative("absorbed by the wall above the water line", dryWallWatts, "W");
        ArgumentChecks.notNegative("absorbed by the lid", lidWatts, "W");
    }

    /** All of it on the underside. */
    public static AbsorbedLight onUnderside(double watts) {
        return new AbsorbedLight(watts, 0, 0, 0);
    }

    /** All faces together, W. */
    public double total() {
        return undersideWatts + wetWallWatts + dryWallWatts + lidWatts;
    }

    /** The same light times a factor. */
    public AbsorbedLight times(double factor) {
        return new AbsorbedLight(
                factor * undersideWatts, factor * wetWallWatts, factor * dryWallWatts, factor * lidWatts);
    }

    /** The same light scaled to the sum {@code watts}; all on the underside if the sum is 0. */
    public AbsorbedLight scaledTo(double watts) {
        return total() > 0 ? times(watts / total()) : onUnderside(watts);
    }
}
