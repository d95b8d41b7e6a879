package simmerpoint.units;

/** In which units answers are written. Files may mix both. */
public enum UnitSystem {
    /** mm, cm, m, m². */
    METRIC,
    /** in, ft². */
    INCH
}
