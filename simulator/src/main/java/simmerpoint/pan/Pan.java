package simmerpoint.pan;

/**
 * A level pan: a closed upright cylinder. A ray lands where it first meets it: underside from below, wall from outside,
 * lid from above.
 *
 * @param diameterMetres outer diameter, above 0
 * @param heightMetres height of the wall up to the lid, above 0
 * @param finish of its outer surface
 * @param castsShadow whether it shades the mirrors; false only to find the cost of the shadow
 * @param support what it stands on
 */
public record Pan(double diameterMetres, double heightMetres, Finish finish, boolean castsShadow, Support support)
        implements Target {
    /** Checks both lengths. */
    public Pan {
        if (!(diameterMetres > 0 && diameterMetres < 100)) {
            throw new IllegalArgumentException("pan diameter " + diameterMetres + " m is not above 0");
        }
        if (!(heightMetres > 0 && heightMetres < 100)) {
            throw new IllegalArgumentException("pan height " + heightMetres + " m is not above 0");
        }
    }

    /** A real pan: it casts a shadow; nothing stands under it. */
    public Pan(double diameterMetres, double heightMetres, Finish finish) {
        this(diameterMetres, heightMetres, finish, true, Support.NONE);
    }

    /** The same pan without its shadow on the mirrors. */
    public Pan withoutShadow() {
        return new Pan(diameterMetres, heightMetres, finish, false, support);
    }

    /** The same pan on something else. */
    public Pan withSupport(Support other) {
        return new Pan(diameterMetres, heightMetres, finish, castsShadow, other);
    }

    @Override
    public double radiusMetres() {
        return diameterMetres / 2;
    }
}
