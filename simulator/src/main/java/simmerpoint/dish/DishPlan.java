package simmerpoint.dish;

import simmerpoint.units.RangeCheck;

/**
 * What the builder sets out to build: a paraboloid z = r²/4f of the given focal length, and how it is cut.
 *
 * @param diameterMetres across the outer corners (for {@link Cut.Smooth} the rim circle), above 0
 * @param focalLengthMetres vertex to nominal focus, above 0
 * @param hubMetres diameter of the circle on which the innermost corners stand; 0 for none; below the diameter
 * @param gapMetres width of the slit between neighbouring panels, at least 0
 * @param cut how the surface is cut into panels
 */
public record DishPlan(double diameterMetres, double focalLengthMetres, double hubMetres, double gapMetres, Cut cut) {
    /** Checks every length; {@code cut} is not null. */
    public DishPlan {
        RangeCheck.require(diameterMetres > 0 && diameterMetres < 1e4, "diameter", diameterMetres, "above 0 m");
        RangeCheck.require(
                focalLengthMetres > 0 && focalLengthMetres < 1e4, "focal length", focalLengthMetres, "above 0 m");
        RangeCheck.require(hubMetres >= 0 && hubMetres < diameterMetres, "hub", hubMetres, "0 m to below the diameter");
        RangeCheck.require(
                gapMetres >= 0 && gapMetres < diameterMetres / 2, "gap", gapMetres, "0 m to below the radius");
        if (cut == null) {
            throw new IllegalArgumentException("a dish needs a cut");
        }
    }

    /** The same dish cut otherwise. */
    public DishPlan withCut(Cut other) {
        return new DishPlan(diameterMetres, focalLengthMetres, hubMetres, gapMetres, other);
    }

    /** The same dish with wider or narrower slits, m. */
    public DishPlan withGap(double metres) {
        return new DishPlan(diameterMetres, focalLengthMetres, hubMetres, metres, cut);
    }

    /** Half the diameter, m. */
    public double radiusMetres() {
        return diameterMetres / 2;
    }
}
