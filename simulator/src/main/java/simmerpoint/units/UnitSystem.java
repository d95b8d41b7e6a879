package simmerpoint.units;

/** Units of the output. Scenario files may mix both. */
public enum UnitSystem {
    /** mm, cm, m, m². */
    METRIC("cm", 0.01),
    /** in, ft². */
    INCH("in", 0.0254);

    /** One foot, m (by definition). */
    public static final double FOOT_METRES = 0.3048;

    /** One mile an hour, m/s (by definition). */
    public static final double MILE_PER_HOUR = 0.44704;

    /** One pound, kg (by definition). */
    public static final double POUND_KILOGRAMS = 0.45359237;

    /** The weight of one pound, N: times the standard acceleration of free fall, 9.80665 m/s² (by definition). */
    public static final double POUND_FORCE_NEWTONS = 4.4482216152605;

    private final String shortUnit;
    private final double shortUnitMetres;

    UnitSystem(String shortUnit, double shortUnitMetres) {
        this.shortUnit = shortUnit;
        this.shortUnitMetres = shortUnitMetres;
    }

    /** Symbol of the unit for the size of a pan: cm or in. */
    public String shortUnit() {
        return shortUnit;
    }

    /** The same unit in m. */
    public double shortUnitMetres() {
        return shortUnitMetres;
    }
}
