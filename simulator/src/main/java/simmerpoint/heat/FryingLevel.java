package simmerpoint.heat;

/** Frying level of the centre of a pan, from weakest to strongest, by {@link FryingThresholds}. */
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
