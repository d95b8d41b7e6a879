package simmerpoint.dish.cut;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import simmerpoint.dish.Curve;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.RibLayout;
import simmerpoint.dish.Zone;
import simmerpoint.geometry.Direction;

/**
 * The panels of another cut in an ideal form, to measure the loss by difference. Each keeps its outline in plan and its
 * tilt.
 *
 * @param panels the cut; not a mesh, whose focus and gaps are unknown
 * @param curved whether each panel is bent to the curve of the ribs, turned about the axis
 * @param filled whether hub, gaps and bare edge are mirror too, each place in the surface that a panel there has
 */
public record Perfected(Cut panels, boolean curved, boolean filled) implements Cut {
    /** Refuses a mesh, and a cut that is perfected already. */
    public Perfected {
        if (panels == null || !panels.has(CutTrait.PARABOLOID) || panels instanceof Perfected) {
            throw new IllegalArgumentException("only our own cuts can be perfected, not " + panels);
        }
    }

    private static Perfected of(Cut cut) {
        return cut instanceof Perfected perfected ? perfected : new Perfected(cut, false, false);
    }

    /** The dish with its panels bent to the paraboloid; the same dish where that changes nothing or cannot be. */
    public static DishPlan curved(DishPlan plan) {
        if (plan.cut() instanceof MeasuredRibs ribs) {
            return plan.withCut(ribs.under(curved(plan.withCut(ribs.panels())).cut()));
        }
        if (!plan.cut().has(CutTrait.PARABOLOID) || !plan.cut().has(CutTrait.PANELS)) {
            return plan;
        }
        Perfected now = of(plan.cut());
        return plan.withCut(new Perfected(now.panels, true, now.filled));
    }

    /** A zone with its panels bent to the paraboloid, within the border that cuts it; the same zone where that changes nothing. */
    public static Zone curved(Zone zone) {
        DishPlan plan = zone.plan();
        if (plan.cut() instanceof Clipped clipped) {
            Cut bent = curved(plan.withCut(clipped.panels())).cut();
            return zone.withPlan(plan.withCut(new Clipped(bent, clipped.region(), clipped.rim())));
        }
        return zone.withPlan(curved(plan));
    }

    /** The dish with mirror in place of all its holes; the same dish where there are none or they are unknown. */
    public static DishPlan filled(DishPlan plan) {
        if (plan.cut() instanceof MeasuredRibs ribs) {
            return plan.withCut(ribs.under(filled(plan.withCut(ribs.panels())).cut()));
        }
        if (!plan.cut().has(CutTrait.PARABOLOID) || !plan.hasHoles()) {
            return plan;
        }
        Perfected now = of(plan.cut());
        return plan.withCut(new Perfected(now.panels, now.curved, true));
    }

    /** That of its panels. */
    @Override
    public CutKind kind() {
        return panels.kind();
    }

    @Override
    public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
        MirrorSurface laid = panels.surface(plan.withCut(panels), sunInDish);
        MirrorSurface bent = curved || !has(CutTrait.PANELS) ? new TurnedSurface(plan.profile(), 0, laid) : laid;
        return filled ? new FilledSurface(bent) : bent;
    }

    @Override
    public List<PanelOutline> outlines(DishPlan plan) {
        return panels.outlines(plan.withCut(panels));
    }

    @Override
    public double rimArea(DishPlan plan) {
        return panels.rimArea(plan.withCut(panels));
    }

    @Override
    public double upperEdgeMetres(DishPlan plan) {
        return panels.upperEdgeMetres(plan.withCut(panels));
    }

    @Override
    public double lowerEdgeMetres(DishPlan plan) {
        return panels.lowerEdgeMetres(plan.withCut(panels));
    }

    @Override
    public List<Zone> zones() {
        return panels.zones();
    }

    @Override
    public Curve curve() {
        return panels.curve();
    }

    @Override
    public Cut onParabola() {
        return new Perfected(panels.onParabola(), curved, filled);
    }

    @Override
    public Cut withZones(UnaryOperator<Zone> change) {
        return new Perfected(panels.withZones(change), curved, filled);
    }

    @Override
    public Optional<RibLayout> ribs(DishPlan plan) {
        return panels.ribs(plan.withCut(panels));
    }

    @Override
    public String description(DishPlan plan, String count, DoubleFunction<String> length) {
        return panels.description(plan.withCut(panels), count, length);
    }
}
