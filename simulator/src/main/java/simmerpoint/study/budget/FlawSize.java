package simmerpoint.study.budget;

/**
 * How large a flaw is, where one figure tells it.
 *
 * @param value SI
 * @param kind what it measures
 */
public record FlawSize(double value, Kind kind) {
    /** What a size measures. */
    public enum Kind {
        /** A standard deviation of angles, rad. */
        DEVIATION,
        /** An angle on the sky, rad. */
        SKY_ANGLE,
        /** A share, 0 to 1. */
        SHARE,
        /** A length, m. */
        LENGTH
    }
}
