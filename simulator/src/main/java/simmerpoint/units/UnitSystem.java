package simmerpoint.units;

/** Units of the output. Scenario files may mix both. */
public enum UnitSystem {
    /** mm, cm, m, m². */
    METRIC,
    /** in, ft². */
    INCH
}
