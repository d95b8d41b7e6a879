package simmerpoint.trial.fit;

/**
 * A measurement that would tell two flaws apart.
 *
 * @param kind what to do
 * @param size of it: m; 0 where there is none
 * @param first the one flaw
 * @param firstExpects what it would show, W of cooking power
 * @param second the other
 * @param secondExpects what that would show, W
 */
public record NextMeasurement(
        Kind kind, double size, TrialFlaw first, double firstExpects, TrialFlaw second, double secondExpects) {
    /** What to do. */
    public enum Kind {
        /** The same with the pan further out. */
        PULL_BACK,
        /** The same with the pan nearer. */
        PUSH_IN,
        /** The same with a smaller pan. */
        SMALLER_PAN,
        /** The same with a larger pan. */
        LARGER_PAN,
        /** Let it cool without sun. */
        COOLING
    }
}
