package simmerpoint.safety.parked;

/** Ways to leave a dish uncovered that somebody might think of. */
public enum Parking {
    /** As it was aimed last. */
    AS_AIMED,
    /** On its back, its axis straight up. */
    ON_ITS_BACK,
    /** Upright, facing away from the sun's half of the sky: north in the north. */
    FACING_AWAY
}
