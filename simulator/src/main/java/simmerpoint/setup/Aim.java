package simmerpoint.setup;

/**
 * How the dish is aimed, with two kinds of error. <b>Drift</b>: the sun has moved while dish and pan stand still.
 * <b>Turn</b>: the dish points the wrong way. Angles are on the sky: {@code up} = the sun is higher (drift) or the axis
 * points too high (turn); {@code side} above 0 is towards +y of the dish frame.
 *
 * @param turnUpRadians axis too high
 * @param turnSideRadians axis off towards +y
 * @param driftUpRadians sun higher than it was
 * @param driftSideRadians sun off towards +y
 * @param jitterRadians standard deviation per axis of the turns of a dish that shakes; the pan follows them if the dish
 *     carries it
 * @param mountMetres distance of the point the dish turns about behind the vertex
 * @param panCarriedBy whether the pan follows a turn of the dish
 */
public record Aim(
        double turnUpRadians,
        double turnSideRadians,
        double driftUpRadians,
        double driftSideRadians,
        double jitterRadians,
        double mountMetres,
        PanCarrier panCarriedBy) {
    /** What the pan stands on. */
    public enum PanCarrier {
        /** A stand of its own: the pan stays in place when the dish is turned. */
        STAND,
        /** The dish: the pan's centre turns with it; the pan stays level. */
        DISH
    }

    /** The dish points at the sun and stands still; pan on its own stand, mount at the vertex. */
    public static final Aim PERFECT = new Aim(0, 0, 0, 0, 0, 0, PanCarrier.STAND);

    /** The same with another turn, rad. */
    public Aim withTurn(double up, double side) {
        return new Aim(up, side, driftUpRadians, driftSideRadians, jitterRadians, mountMetres, panCarriedBy);
    }

    /** The same with another drift, rad. */
    public Aim withDrift(double up, double side) {
        return new Aim(turnUpRadians, turnSideRadians, up, side, jitterRadians, mountMetres, panCarriedBy);
    }

    /** The same with neither turn nor drift; what shakes, carries and holds the dish stays. */
    public Aim deadOn() {
        return withTurn(0, 0).withDrift(0, 0);
    }

    /** Whether there is neither turn nor drift. */
    public boolean isDeadOn() {
        return turnUpRadians == 0 && turnSideRadians == 0 && driftUpRadians == 0 && driftSideRadians == 0;
    }

    /** The same with the axis off by this much more, rad. */
    public Aim plusTurn(double up, double side) {
        return withTurn(turnUpRadians + up, turnSideRadians + side);
    }

    /** The same with the sun moved on by this much more, rad. */
    public Aim plusDrift(double up, double side) {
        return withDrift(driftUpRadians + up, driftSideRadians + side);
    }

    /** The same with another jitter, rad. */
    public Aim withJitter(double radians) {
        return new Aim(
                turnUpRadians, turnSideRadians, driftUpRadians, driftSideRadians, radians, mountMetres, panCarriedBy);
    }
}
