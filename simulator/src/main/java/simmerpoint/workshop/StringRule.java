package simmerpoint.workshop;

import simmerpoint.dish.Parabola;
import simmerpoint.units.UnitSystem;

/**
 * How to draw the rib's curve with a string. A pin stands at the focus, a straight bar lies square to the axis above it. A
 * string from the pin round the pencil to the bar, its last part parallel to the axis, has the same length all along the curve: a
 * point of a parabola is as far from its focus as from its directrix (any book on conic sections).
 *
 * @param focus height of the pin above the vertex, m
 * @param bar height of the bar above the vertex, m
 * @param string length of the string from pin to bar, m
 * @param depth of the curve at the rim, m: the first length to check
 * @param halfRadius half of the rim's distance from the axis, m
 * @param halfHeight of the curve there, m: the second
 */
public record StringRule(double focus, double bar, double string, double depth, double halfRadius, double halfHeight) {
    private static final double FIVE_CENTIMETRES = 0.05;

    /**
     * For a curve out to a rim that far from the axis, m; the bar at a round height, 10 to 15 cm or 4 to 6 in above whatever is higher.
     */
    public static StringRule of(Parabola parabola, double rim, UnitSystem units) {
        double f = parabola.focalLength();
        double step = units == UnitSystem.METRIC ? FIVE_CENTIMETRES : 2 * units.shortUnitMetres();
        double bar = step * (Math.ceil(Math.max(f, parabola.height(rim)) / step - 1e-9) + 2);
        return new StringRule(f, bar, f + bar, parabola.height(rim), rim / 2, parabola.height(rim / 2));
    }
}
