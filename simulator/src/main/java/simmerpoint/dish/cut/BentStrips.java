package simmerpoint.dish.cut;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
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

/**
 * Panels bent along the ribs and straight from rib to rib: each exactly a cylinder, on a parabola one of focal length f·cos²(π/n).
 *
 * @param sectors number of strips round the axis, at least 3
 * @param curve of the ribs
 */
public record BentStrips(int sectors, Curve curve) implements Cut {
    /** What is known of it beforehand. */
    public static final CutKind KIND = new CutKind(
            "bent-strips",
            "strips bent along the ribs, straight from rib to rib",
            List.of(SectorPanels.SECTORS, RibCurve.CURVE),
            Set.of(CutTrait.PARABOLOID, CutTrait.PANELS, CutTrait.SEAMS, CutTrait.RIBS, CutTrait.FULL_RIM),
            v -> new BentStrips(v.count(SectorPanels.SECTORS), RibCurve.of(v)));

    /** A saw wanders over about a hand's width (common practice), m. */
    private static final double RIB_LENGTH = 0.1;

    /** Checks the count. */
    public BentStrips {
        SectorPanels.check(sectors);
    }

    /** On ribs cut to the parabola. */
    public BentStrips(int sectors) {
        this(sectors, Curve.PARABOLA);
    }

    @Override
    public CutKind kind() {
        return KIND;
    }

    @Override
    public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
        return new BentStripSurface(plan, this);
    }

    @Override
    public List<PanelOutline> outlines(DishPlan plan) {
        BentStripSurface surface = new BentStripSurface(plan, this);
        return PanelOutline.numbered(IntStream.range(0, surface.panels()).mapToObj(surface::edge));
    }

    @Override
    public List<FlatPanel> flatPanels(DishPlan plan) {
        BentStripSurface surface = new BentStripSurface(plan, this);
        return surface.laidFlat().stream()
                .flatMap(edge -> IntStream.range(0, sectors).mapToObj(k -> new FlatPanel(k, edge, true)))
                .toList();
    }

    /** Unrolled: points along the strip's middle as far as the curve is long, across as in the dish. */
    @Override
    public FlatPanel flatPanel(DishPlan plan, PanelOutline outline) {
        return new FlatPanel(outline.panel(), new BentStripSurface(plan, this).unrolled(outline), true);
    }

    @Override
    public String description(DishPlan plan, String panels, DoubleFunction<String> length) {
        return panels + " strips bent along the ribs" + SectorPanels.atRim(largestPanel(plan), length)
                + RibCurve.words(curve);
    }

    @Override
    public Cut onParabola() {
        return new BentStrips(sectors);
    }

    @Override
    public String shapeLossName() {
        return "strips straight across";
    }

    /** Measured along its curve. */
    @Override
    public Optional<PanelSize> largestPanel(DishPlan plan) {
        return SectorPanels.size(plan, sectors, ribArc(plan));
    }

    private static double ribArc(DishPlan plan) {
        return plan.profile().arcLength(plan.radiusMetres()) - plan.profile().arcLength(plan.hubMetres() / 2);
    }

    @Override
    public Optional<RibLayout> ribs(DishPlan plan) {
        int lengths = Math.max(1, (int) Math.round(ribArc(plan) / RIB_LENGTH));
        return Optional.of(
                new RibLayout(sectors, true, new RingBorders(lengths, RingSpacing.EQUAL_WIDTH, plan).radius));
    }

    /** The shorter of a strip's outer edge and its length, in plan. */
    @Override
    public double gapLimit(double diameterMetres, double hubMetres) {
        return Math.min(SectorPanels.edge(diameterMetres, sectors), diameterMetres / 2 - hubMetres / 2);
    }
}
