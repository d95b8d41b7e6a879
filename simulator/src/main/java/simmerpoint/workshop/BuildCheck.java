package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.DishPlan;

/**
 * Lengths to measure on the finished dish, m.
 *
 * @param acrossRim from a rib's tip through the axis to the other side: a tip, or the middle of an edge if ribs are odd in number
 * @param betweenTips from one rib's tip to the next one's
 * @param depths below a straight edge laid across the rim, from the middle outwards
 */
public record BuildCheck(double acrossRim, double betweenTips, List<Depth> depths) {
    private static final int STEPS = 6;

    /**
     * A depth.
     *
     * @param radius distance from the axis, m
     * @param depth below the rim's plane, m
     */
    public record Depth(double radius, double depth) {}

    static BuildCheck of(DishPlan plan, int ribs) {
        double rim = plan.radiusMetres();
        double hub = plan.hubMetres() / 2;
        List<Depth> depths = new ArrayList<>();
        for (int k = 0; k < STEPS; k++) {
            double r = hub + (rim - hub) * k / STEPS;
            depths.add(
                    new Depth(r, plan.parabola().height(rim) - plan.parabola().height(r)));
        }
        double other = ribs % 2 == 0 ? rim : rim * Math.cos(Math.PI / ribs);
        return new BuildCheck(rim + other, 2 * rim * Math.sin(Math.PI / ribs), depths);
    }
}
