package simmerpoint.pan;

/**
 * A level pan: a closed upright cylinder. A ray lands where it first meets it: underside from below, wall from outside,
 * lid from above.
 *
 * @param diameterMetres outer diameter, above 0
 * @param heightMetres height of the wall up to the lid, above 0
 * @param finish what its outside is like
 */
public record Pan(double diameterMetres, double heightMetres, Finish finish) implements Target {
    /** Checks both lengths. */
    public Pan {
        if (!(diameterMetres > 0 && diameterMetres < 100)) {
            throw new IllegalArgumentException("pan diameter " + diameterMetres + " m is not above 0");
        }
        if (!(heightMetres > 0 && heightMetres < 100)) {
            throw new IllegalArgumentException("pan height " + heightMetres + " m is not above 0");
        }
    }

    @Override
    public double radiusMetres() {
        return diameterMetres / 2;
    }
}
