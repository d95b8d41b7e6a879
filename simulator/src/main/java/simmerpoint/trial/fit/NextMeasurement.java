package simmerpoint.trial.fit;

import simmerpoint.dish.built.Mask;

/**
 * A measurement that would tell two flaws apart.
 *
 * @param kind what to do
 * @param size of it: of a mask its width, of a card its distance from the middle of the dish, m; 0 where there is none
 * @param first the one flaw
 * @param firstExpects what it would show: W of cooking power, W of loss of a pan that cools, of a card the width of the spot, m
 * @param second the other
 * @param secondExpects what that would show
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
        /** The same with a mask along the rim. */
        MASK_RIM(Mask.Part.RIM),
        /** The same with a round mask over the middle. */
        MASK_MIDDLE(Mask.Part.MIDDLE),
        /** The same with a mask over the upper half. */
        MASK_UPPER(Mask.Part.UPPER),
        /** The same with one over the lower half. */
        MASK_LOWER(Mask.Part.LOWER),
        /** The same with one over the right half, seen from behind the dish. */
        MASK_RIGHT(Mask.Part.RIGHT),
        /** Let it cool without sun. */
        COOLING,
        /** Look at the spot on a card; its width is what is expected. */
        CARD;

        private final Mask.Part covered;

        Kind() {
            this(Mask.Part.NONE);
        }

        Kind(Mask.Part covered) {
            this.covered = covered;
        }

        /** What of the mirror is covered for it. */
        public Mask.Part covered() {
            return covered;
        }
    }

    /** Whether what is expected is a width and no watts. */
    public boolean isWidth() {
        return kind == Kind.CARD;
    }
}
