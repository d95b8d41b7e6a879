package simmerpoint.study.aim;

import simmerpoint.units.UnitSystem;

/**
 * What is asked about aiming.
 *
 * @param lossShare share of the watts that may be lost, above 0, below 1
 * @param stickMetres length of a sighting stick, above 0
 */
public record AimPlan(double lossShare, double stickMetres) {
    /** Length of the stick where none is given, m. */
    public static final double USUAL_STICK = 0.10;

    private static final double USUAL_STICK_INCHES = 4;

    /** A tenth may be lost; a stick of 10 cm. */
    public static final AimPlan USUAL = new AimPlan(AimTolerance.USUAL_LOSS, USUAL_STICK);

    /** A tenth may be lost; a stick of a round length for readers of those units: 10 cm or 4 in. */
    public static AimPlan usual(UnitSystem system) {
        return system == UnitSystem.INCH
                ? new AimPlan(AimTolerance.USUAL_LOSS, USUAL_STICK_INCHES * UnitSystem.INCH.shortUnitMetres())
                : USUAL;
    }

    /** Checks both figures. */
    public AimPlan {
        if (!(lossShare > 0 && lossShare < 1)) {
            throw new IllegalArgumentException("a loss of " + lossShare + " is outside 0 to 1");
        }
        if (!(stickMetres > 0 && stickMetres < 100)) {
            throw new IllegalArgumentException("a stick of " + stickMetres + " m is not above 0");
        }
    }
}
