package simmerpoint.dish;

import java.util.Optional;

/**
 * Size of the largest flat panel or bent strip, one that reaches to the rim, as a builder would measure it.
 *
 * @param rimMetres length of its edge at the rim, without the gap, m
 * @param ribMetres its length along the rib, without the gap between rings, m
 */
public record PanelSize(double rimMetres, double ribMetres) {
    /** The size, for cuts into sectors; a strip is measured along its curve. */
    public static Optional<PanelSize> of(DishPlan plan) {
        Parabola parabola = new Parabola(plan.focalLengthMetres());
        double rim = plan.radiusMetres();
        double hub = plan.hubMetres() / 2;
        if (plan.cut() instanceof Cut.FlatRings rings) {
            double[] radius = new RingBorders(rings, hub, rim, parabola).radius;
            double inner = radius[radius.length - 2];
            double along = Math.hypot(rim - inner, parabola.height(rim) - parabola.height(inner));
            return Optional.of(sized(plan, rings.sectors(), rings.rings() > 1 ? along - plan.gapMetres() : along));
        }
        if (plan.cut() instanceof Cut.BentStrips strips) {
            return Optional.of(sized(plan, strips.sectors(), parabola.arcLength(rim) - parabola.arcLength(hub)));
        }
        return Optional.empty();
    }

    private static PanelSize sized(DishPlan plan, int sectors, double along) {
        double edge = plan.diameterMetres() * Math.sin(Math.PI / sectors) - plan.gapMetres();
        return new PanelSize(Math.max(0, edge), Math.max(0, along));
    }
}
