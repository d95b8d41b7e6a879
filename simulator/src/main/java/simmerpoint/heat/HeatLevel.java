package simmerpoint.heat;

/** What the water of a pan does, from coolest to hottest. The borders stand in {@link HeatLevelThresholds}. */
public enum HeatLevel {
    /** Settles too cool to hold food. */
    TOO_COOL,
    /** Holds food hot, cooks it slowly at best. */
    KEEP_WARM,
    /** From just below boiling to a few bubbles. */
    SIMMER,
    /** Boils. */
    BOIL,
    /** Boils hard: more heat than cooking needs. */
    FAST_BOIL
}
