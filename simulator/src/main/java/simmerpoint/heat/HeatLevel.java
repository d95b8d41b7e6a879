package simmerpoint.heat;

/** Heat level of a pan of water, from coolest to hottest, by {@link HeatLevelThresholds}. */
public enum HeatLevel {
    /** Too cool to keep food hot. */
    TOO_COOL,
    /** Keeps food hot, cooks it slowly at best. */
    KEEP_WARM,
    /** From just below boiling to a few bubbles. */
    SIMMER,
    /** Boils. */
    BOIL,
    /** Boils hard: more heat than cooking needs. */
    FAST_BOIL
}
