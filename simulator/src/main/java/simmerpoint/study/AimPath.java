package simmerpoint.study;

import simmerpoint.setup.Aim;

/**
 * One way on the sky along which an aim goes wrong.
 *
 * @param turn whether the dish is turned; else the sun drifts
 * @param up part of the way upwards: with {@code side} the components of a direction of length 1
 * @param side part of the way towards +y
 */
record AimPath(boolean turn, double up, double side) {
    /** Checks the length. */
    AimPath {
        if (!(Math.abs(Math.hypot(up, side) - 1) < 1e-9)) {
            throw new IllegalArgumentException("a way on the sky has length 1, not " + Math.hypot(up, side));
        }
    }

    /** {@code aim} with this much more turn or drift (rad). */
    Aim off(Aim aim, double radians) {
        double u = radians * up;
        double s = radians * side;
        return new Aim(
                aim.turnUpRadians() + (turn ? u : 0),
                aim.turnSideRadians() + (turn ? s : 0),
                aim.driftUpRadians() + (turn ? 0 : u),
                aim.driftSideRadians() + (turn ? 0 : s),
                aim.jitterRadians(),
                aim.mountMetres(),
                aim.panCarriedBy());
    }

    /** {@code aim} with neither turn nor drift; what shakes, carries and holds the dish stays. */
    static Aim deadOn(Aim aim) {
        return new Aim(0, 0, 0, 0, aim.jitterRadians(), aim.mountMetres(), aim.panCarriedBy());
    }
}
