package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;
import simmerpoint.dish.Aperture;
import simmerpoint.dish.Curve;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.FlatPanel;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/**
 * The uncut bowl.
 *
 * @param curve that it is turned from
 */
public record Smooth(Curve curve) implements Cut {
    /** What is known of it beforehand. */
    public static final CutKind KIND = new CutKind(
            "smooth",
            "the perfect bowl, to compare with",
            List.of(RibCurve.CURVE),
            Set.of(CutTrait.PARABOLOID, CutTrait.FULL_RIM),
            values -> new Smooth(RibCurve.of(values)));

    private static final int CIRCLE_POINTS = 180;

    /** The paraboloid. */
    public Smooth() {
        this(Curve.PARABOLA);
    }

    @Override
    public CutKind kind() {
        return KIND;
    }

    @Override
    public Cut onParabola() {
        return new Smooth();
    }

    @Override
    public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
        MirrorSurface paraboloid = new SmoothSurface(plan.onParabola());
        return curve == Curve.PARABOLA
                ? paraboloid
                : new TurnedSurface(plan.profile(), plan.hubMetres() / 2, paraboloid);
    }

    @Override
    public List<PanelOutline> outlines(DishPlan plan) {
        List<Vec> hub = plan.hubMetres() > 0 ? circle(plan, Aperture.about(plan.hubMetres() / 2)) : List.of();
        return List.of(new PanelOutline(0, circle(plan, plan.aperture()), hub));
    }

    /** It has no panels. */
    @Override
    public List<FlatPanel> flatPanels(DishPlan plan) {
        return List.of();
    }

    /** What seems a circle along the axis. */
    static List<Vec> circle(DishPlan plan, Aperture circle) {
        List<Vec> points = new ArrayList<>(CIRCLE_POINTS);
        for (int k = 0; k < CIRCLE_POINTS; k++) {
            double angle = 2 * Math.PI * k / CIRCLE_POINTS;
            points.add(plan.onMirror(
                    circle.x() + circle.radius() * Math.cos(angle), circle.y() + circle.radius() * Math.sin(angle)));
        }
        return points;
    }

    @Override
    public String description(DishPlan plan, String panels, DoubleFunction<String> length) {
        return "smooth, not cut" + RibCurve.words(curve);
    }
}
