package simmerpoint.heat;

/**
 * A time of unchanging light.
 *
 * @param seconds how long, above 0
 * @param absorbed light taken up meanwhile
 */
public record Spell(double seconds, Absorbed absorbed) {
    /** Checks the time. */
    public Spell {
        Checks.positive("spell", seconds, "s");
    }
}
