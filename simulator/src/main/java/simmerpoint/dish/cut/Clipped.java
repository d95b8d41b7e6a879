package simmerpoint.dish.cut;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import simmerpoint.dish.Curve;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.FlatPanel;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.PanelSize;
import simmerpoint.dish.RibLayout;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Point;

/**
 * What a rim that is not round leaves of another cut.
 *
 * @param panels the cut, one of our own
 * @param region what is left
 * @param rim the rim of the dish, {@link Rim#ROUND} where another border cuts it
 */
public record Clipped(Cut panels, PlanRegion region, Rim rim) implements Cut {
    /** Refuses a mesh, whose rim is drawn in its file. */
    public Clipped {
        if (!panels.has(CutTrait.PARABOLOID)) {
            throw new IllegalArgumentException("only our own cuts can have a rim, not " + panels);
        }
    }

    /** The cut itself where the region is the whole circle. */
    public static Cut of(Cut panels, PlanRegion region) {
        if (region.isCircle()) {
            return panels;
        }
        return panels instanceof Clipped inner
                ? new Clipped(inner.panels, inner.region.common(region), inner.rim)
                : new Clipped(panels, region, Rim.ROUND);
    }

    /** What lies within a rim, and within a circle of that radius, m; the cut itself within a round one. */
    public static Cut within(Cut panels, Rim rim, double radius) {
        PlanRegion region = rim.region(radius);
        return region.isCircle() ? panels : new Clipped(panels, region, rim);
    }

    private DishPlan inner(DishPlan plan) {
        return plan.withCut(panels);
    }

    @Override
    public CutKind kind() {
        return panels.kind();
    }

    @Override
    public Curve curve() {
        return panels.curve();
    }

    @Override
    public Cut onParabola() {
        return new Clipped(panels.onParabola(), region, rim);
    }

    @Override
    public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
        MirrorSurface whole = panels.surface(inner(plan), sunInDish);
        return surface(plan, whole);
    }

    private MirrorSurface surface(DishPlan plan, MirrorSurface whole) {
        ClippedOutlines parts = parts(plan, whole);
        double aperture = panels.has(CutTrait.PANELS) ? parts.area(whole.apertureArea()) : bowl(plan);
        return new ClippedSurface(whole, region, parts, aperture);
    }

    /** Area of a dish without panels, m². */
    private double bowl(DishPlan plan) {
        double within = within(plan).area();
        return plan.hubMetres() > 0
                ? within
                        - region.common(PlanRegion.circle(plan.hubMetres() / 2)).area()
                : within;
    }

    private ClippedOutlines parts(DishPlan plan, MirrorSurface whole) {
        return new ClippedOutlines(panels.outlines(inner(plan)), whole, region, panels.leavesOutCutPanels());
    }

    @Override
    public List<PanelOutline> outlines(DishPlan plan) {
        return parts(plan, panels.surface(inner(plan), Direction.Z)).outlines();
    }

    @Override
    public List<FlatPanel> flatPanels(DishPlan plan) {
        ClippedOutlines parts = parts(plan, panels.surface(inner(plan), Direction.Z));
        Map<Integer, FlatPanel> whole = panels.flatPanels(inner(plan)).stream()
                .collect(Collectors.toMap(FlatPanel::panel, Function.identity()));
        return parts.flat(whole, outline -> panels.flatPanel(inner(plan), outline));
    }

    @Override
    public String description(DishPlan plan, String count, DoubleFunction<String> length) {
        String rimmed = rim.words(length);
        return panels.description(inner(plan), count, length) + (rimmed.isEmpty() ? "" : "; " + rimmed);
    }

    @Override
    public String shapeLossName() {
        return panels.shapeLossName();
    }

    @Override
    public Optional<PanelSize> largestPanel(DishPlan plan) {
        return panels.largestPanel(inner(plan));
    }

    @Override
    public Optional<String> panelSizeLabel(DishPlan plan, DoubleFunction<String> length) {
        return panels.panelSizeLabel(inner(plan), length);
    }

    @Override
    public Optional<RibLayout> ribs(DishPlan plan) {
        PlanRegion left = within(plan);
        return panels.ribs(inner(plan))
                .map(ribs -> ribs.withEnds(left.ends(ribs.sectors(), plan.hubMetres() / 2, plan.radiusMetres())));
    }

    @Override
    public double gapLimit(double diameterMetres, double hubMetres) {
        return panels.gapLimit(diameterMetres, hubMetres);
    }

    @Override
    public double estimatedPanels(double diameterMetres, double hubMetres, double gapMetres) {
        return panels.estimatedPanels(diameterMetres, hubMetres, gapMetres);
    }

    @Override
    public boolean fits(DishPlan plan) {
        return panels.fits(inner(plan)) && !outlines(plan).isEmpty();
    }

    @Override
    public double rimArea(DishPlan plan) {
        return within(plan).area();
    }

    /** What is left of a dish of that diameter. */
    PlanRegion within(DishPlan plan) {
        return region.common(PlanRegion.circle(plan.radiusMetres()));
    }

    @Override
    public double upperEdgeMetres(DishPlan plan) {
        return edge(plan, Point::x);
    }

    @Override
    public double lowerEdgeMetres(DishPlan plan) {
        return edge(plan, p -> -p.x());
    }

    private double edge(DishPlan plan, ToDoubleFunction<Point> farOut) {
        return within(plan).outline().stream()
                .flatMap(part -> part.corners().stream())
                .mapToDouble(farOut)
                .max()
                .orElse(plan.radiusMetres());
    }

    /** The farthest corner. */
    @Override
    public double reachMetres(DishPlan plan) {
        return outlines(plan).stream()
                .flatMap(outline -> outline.edge().stream())
                .mapToDouble(p -> Math.hypot(p.x(), p.y()))
                .max()
                .orElse(plan.radiusMetres());
    }
}
