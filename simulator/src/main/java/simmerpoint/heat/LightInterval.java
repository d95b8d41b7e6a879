package simmerpoint.heat;

/**
 * A time of unchanging light.
 *
 * @param seconds how long, above 0
 * @param absorbed light taken up meanwhile
 */
public record LightInterval(double seconds, AbsorbedLight absorbed) {
    /** Checks the time. */
    public LightInterval {
        ArgumentChecks.positive("spell", seconds, "s");
    }
}
