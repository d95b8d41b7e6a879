package simmerpoint.study;

import java.util.function.DoubleFunction;
import simmerpoint.setup.Aim;

/**
 * One straight way on the sky along which an aim goes wrong.
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
        return turn ? more(aim, radians * up, radians * side, 0, 0) : more(aim, 0, 0, radians * up, radians * side);
    }

    /** The aims along this way from {@code aim}, by angle (rad). */
    DoubleFunction<Aim> from(Aim aim) {
        return radians -> off(aim, radians);
    }

    /** {@code aim} with more turn and more drift (rad). */
    static Aim more(Aim aim, double turnUp, double turnSide, double driftUp, double driftSide) {
        return new Aim(
                aim.turnUpRadians() + turnUp,
                aim.turnSideRadians() + turnSide,
                aim.driftUpRadians() + driftUp,
                aim.driftSideRadians() + driftSide,
                aim.jitterRadians(),
                aim.mountMetres(),
                aim.panCarriedBy());
    }

    /** {@code aim} with neither turn nor drift; what shakes, carries and holds the dish stays. */
    static Aim deadOn(Aim aim) {
        return new Aim(0, 0, 0, 0, aim.jitterRadians(), aim.mountMetres(), aim.panCarriedBy());
    }
}
