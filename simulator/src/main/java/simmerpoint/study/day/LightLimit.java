package simmerpoint.study.day;

/**
 * What keeps a pan from more heat at some hour.
 *
 * @param kind what it is
 * @param share how much of it, 0 to 1, as its kind says
 */
public record LightLimit(Kind kind, double share) {
    /** Smaller shares are not worth a word (this project's choice). */
    public static final double LEAST = 0.1;

    /** The kinds. */
    public enum Kind {
        /** The sun is weak: share by which the beam is below 700 W/m², to which tests of solar cookers are standardised. */
        WEAK_BEAM,
        /** Light goes past the pan, most of it under the edge or over the lid: share of the reflected light. */
        MISSES,
        /** Light climbs the wall, of which the part above the water heats little: share of the caught light. */
        CLIMBS_WALL
    }
}
