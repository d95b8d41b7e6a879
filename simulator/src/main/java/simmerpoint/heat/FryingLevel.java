package simmerpoint.heat;

/** How well the middle of a pan fries, from weakest to strongest. The borders stand in {@link FryingThresholds}. */
public enum FryingLevel {
    /** Food stews in its own water. */
    NO_FRYING,
    /** Eggs, onions, pancakes, with patience. */
    GENTLE,
    /** Browns meat and potatoes. */
    FRY,
    /** Sears: a large ring on full. Oil may smoke and, left alone, catch fire. */
    SEAR
}
