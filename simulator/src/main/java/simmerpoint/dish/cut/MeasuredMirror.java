package simmerpoint.dish.cut;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import simmerpoint.dish.Aperture;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.CutValues;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.FlatPanel;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.OwnSize;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.points.MeasuredShape;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/**
 * A mirror without panels that was measured point by point.
 *
 * @param shape its shape
 * @param perfect whether it is bent to the paraboloid nearest to that, within the same outline
 */
public record MeasuredMirror(MeasuredShape shape, boolean perfect) implements Cut {
    private static final CutParameter POINTS = CutParameter.file(
            "points",
            "points.csv",
            "CSV table of measured points of the mirror: first the line x_mm,y_mm,z_mm (or _cm, _m, _in; depth for z counted"
                    + " down), x upwards, y to the right, z along the axis, seen from behind the dish.");

    private static final String ALONG_Z = "z";

    private static final CutParameter AXIS = CutParameter.word(
            "axis",
            ALONG_Z,
            List.of(ALONG_Z, "fitted"),
            "Which way the axis of the mirror points: along z of the table, or as the paraboloid does that fits the points best, where the"
                    + " dish leaned when it was measured.");

    /** What is known of it beforehand. */
    public static final CutKind KIND = new CutKind(
            "measured-points",
            "a mirror measured point by point",
            List.of(POINTS, AXIS),
            Set.of(CutTrait.PARABOLOID, CutTrait.FULL_RIM, CutTrait.OWN_SIZE),
            MeasuredMirror::of);

    private static MeasuredMirror of(CutValues values) {
        MeasuredShape shape = values.points(POINTS);
        boolean fitted = shape != null && !values.word(AXIS).equals(ALONG_Z);
        return new MeasuredMirror(fitted ? shape.straightened() : shape, false);
    }

    /** The dish bent to the paraboloid nearest to what was measured; the same dish where nothing was. */
    public static DishPlan mended(DishPlan plan) {
        return plan.cut() instanceof MeasuredMirror mirror
                ? plan.withCut(new MeasuredMirror(mirror.shape, true))
                : plan;
    }

    @Override
    public CutKind kind() {
        return KIND;
    }

    @Override
    public Optional<OwnSize> ownSize() {
        return Optional.of(new OwnSize(2 * shape.circle()[2], shape.focalLength()));
    }

    @Override
    public Aperture aperture(DishPlan plan) {
        double[] circle = shape.circle();
        return new Aperture(circle[0], circle[1], circle[2]);
    }

    @Override
    public double reachMetres(DishPlan plan) {
        return aperture(plan).reach();
    }

    @Override
    public double rimArea(DishPlan plan) {
        return shape.outlineArea();
    }

    @Override
    public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
        return new MeasuredSurface(shape, perfect, plan.focalLengthMetres());
    }

    @Override
    public List<PanelOutline> outlines(DishPlan plan) {
        List<Vec> edge = shape.corners().stream()
                .map(corner -> plan.onMirror(corner.x(), corner.y()))
                .toList();
        return List.of(new PanelOutline(0, edge, List.of()));
    }

    /** It is not made of panels. */
    @Override
    public List<FlatPanel> flatPanels(DishPlan plan) {
        return List.of();
    }

    @Override
    public String description(DishPlan plan, String panels, DoubleFunction<String> length) {
        return "measured at " + shape.points() + " points (" + shape.name() + "), which are "
                + length.apply(shape.offParaboloid()) + " off the nearest paraboloid (root mean square)";
    }

    @Override
    public Optional<String> fileName() {
        return Optional.of(shape.name());
    }
}
