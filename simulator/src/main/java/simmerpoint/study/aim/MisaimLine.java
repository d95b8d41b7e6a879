package simmerpoint.study.aim;

import java.util.function.DoubleFunction;
import simmerpoint.setup.Aim;

/**
 * One straight way on the sky along which an aim goes wrong.
 *
 * @param turn whether the dish is turned; else the sun drifts
 * @param up part of the way upwards: with {@code side} the components of a direction of length 1
 * @param side part of the way towards +y
 */
record MisaimLine(boolean turn, double up, double side) {
    /** Checks the length. */
    MisaimLine {
        if (!(Math.abs(Math.hypot(up, side) - 1) < 1e-9)) {
            throw new IllegalArgumentException("a way on the sky has length 1, not " + Math.hypot(up, side));
        }
    }

    /** {@code aim} with this much more turn or drift (rad). */
    Aim off(Aim aim, double radians) {
        return turn ? aim.plusTurn(radians * up, radians * side) : aim.plusDrift(radians * up, radians * side);
    }

    /** The aims along this way from {@code aim}, by angle (rad). */
    DoubleFunction<Aim> from(Aim aim) {
        return radians -> off(aim, radians);
    }
}
