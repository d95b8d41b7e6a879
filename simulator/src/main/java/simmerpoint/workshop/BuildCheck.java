package simmerpoint.workshop;

import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.dish.DishPlan;
import simmerpoint.units.UnitSystem;

/**
 * Lengths to measure on the finished dish, m.
 *
 * @param acrossRim from a rib's tip through the axis to the other side: a tip, or the middle of an edge if ribs are odd in number
 * @param betweenTips from one rib's tip to the next one's
 * @param depths below a straight edge laid across the rim, from the middle outwards
 */
public record BuildCheck(double acrossRim, double betweenTips, List<Depth> depths) {
    private static final int STEPS = 6;
    private static final double CENTIMETRE = 0.01;

    /**
     * A depth.
     *
     * @param radius distance from the axis, m
     * @param depth below the rim's plane, m
     */
    public record Depth(double radius, double depth) {}

    /** Depths at round distances: whole centimetres or half inches, the first at the hub's edge or just outside it. */
    static BuildCheck of(DishPlan plan, int ribs, UnitSystem units) {
        double rim = plan.radiusMetres();
        double hub = plan.hubMetres() / 2;
        double step = units == UnitSystem.METRIC ? CENTIMETRE : units.shortUnitMetres() / 2;
        double first = step * Math.ceil(hub / step - 1e-9);
        List<Depth> depths = IntStream.range(0, STEPS)
                .mapToDouble(k -> first + step * Math.rint((rim - first) * k / STEPS / step))
                .filter(r -> r < rim - step / 4)
                .distinct()
                .mapToObj(r ->
                        new Depth(r, plan.profile().height(rim) - plan.profile().height(r)))
                .toList();
        double other = ribs % 2 == 0 ? rim : rim * Math.cos(Math.PI / ribs);
        return new BuildCheck(rim + other, 2 * rim * Math.sin(Math.PI / ribs), depths);
    }
}
