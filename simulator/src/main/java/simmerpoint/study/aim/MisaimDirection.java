package simmerpoint.study.aim;

import simmerpoint.setup.Aim;

/** The eight plain ways to be off a dead-on aim: drift or turn, up or down, right or left. */
public enum MisaimDirection {
    /** The sun has climbed. */
    DRIFT_UP(false, 1, 0),
    /** The sun has sunk. */
    DRIFT_DOWN(false, -1, 0),
    /** The sun has gone to the right of whoever looks at it (+y). */
    DRIFT_RIGHT(false, 0, 1),
    /** The sun has gone to the left. */
    DRIFT_LEFT(false, 0, -1),
    /** The dish points too high. */
    TURN_UP(true, 1, 0),
    /** The dish points too low. */
    TURN_DOWN(true, -1, 0),
    /** The dish points too far right (+y). */
    TURN_RIGHT(true, 0, 1),
    /** The dish points too far left. */
    TURN_LEFT(true, 0, -1);

    private final boolean turn;
    private final double up;
    private final double side;

    MisaimDirection(boolean turn, double up, double side) {
        this.turn = turn;
        this.up = up;
        this.side = side;
    }

    /** Whether the dish is turned; else the sun drifts. */
    public boolean isTurn() {
        return turn;
    }

    /** Part of the way upwards: 1, −1 or 0. */
    public double up() {
        return up;
    }

    /** Part of the way to the right (+y): 1, −1 or 0. */
    public double side() {
        return side;
    }

    /** The aim this way off {@code aim} by {@code radians}. */
    public Aim off(Aim aim, double radians) {
        return path().off(aim, radians);
    }

    MisaimLine path() {
        return new MisaimLine(turn, up, side);
    }
}
