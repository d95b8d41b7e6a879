package simmerpoint.dish.cut;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import simmerpoint.dish.Curve;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.PanelSize;
import simmerpoint.dish.Profile;
import simmerpoint.dish.RibLayout;
import simmerpoint.geometry.Direction;
import simmerpoint.units.RangeCheck;

/**
 * Sectors × rings of flat trapezoids, all four corners of each on the curve of the ribs.
 *
 * @param sectors number of sectors round the axis, at least 3
 * @param rings number of rings from hub to rim, at least 1
 * @param spacing where the rings' borders lie along the rib
 * @param curve of the ribs
 */
public record FlatRings(int sectors, int rings, RingSpacing spacing, Curve curve) implements Cut {
    /** Number of rings. */
    public static final CutParameter RINGS =
            CutParameter.count("rings", "6", "1 to 10000", "1 to 16", "Number of rings from hub to rim.");

    private static final CutParameter SPACING = CutParameter.word(
            "spacing",
            RingSpacing.EQUAL_WIDTH.word(),
            RingSpacing.words(),
            "Where the borders between rings lie along a rib.");

    /** What is known of it beforehand. */
    public static final CutKind KIND = new CutKind(
            "flat-rings",
            "sectors × rings of flat panels",
            List.of(SectorPanels.SECTORS, RINGS, SPACING, RibCurve.CURVE),
            Set.of(CutTrait.PARABOLOID, CutTrait.PANELS, CutTrait.SEAMS, CutTrait.RIBS, CutTrait.FULL_RIM),
            v -> new FlatRings(
                    v.count(SectorPanels.SECTORS), v.count(RINGS), RingSpacing.of(v.word(SPACING)), RibCurve.of(v)));

    /** Checks both counts. */
    public FlatRings {
        SectorPanels.check(sectors);
        RangeCheck.require(rings >= 1, "rings", rings, "1 or more");
    }

    /** On ribs cut to the parabola. */
    public FlatRings(int sectors, int rings, RingSpacing spacing) {
        this(sectors, rings, spacing, Curve.PARABOLA);
    }

    @Override
    public CutKind kind() {
        return KIND;
    }

    @Override
    public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
        return new FlatRingSurface(plan, this);
    }

    @Override
    public List<PanelOutline> outlines(DishPlan plan) {
        FlatRingSurface surface = new FlatRingSurface(plan, this);
        return PanelOutline.numbered(IntStream.range(0, surface.panels()).mapToObj(surface::edge));
    }

    @Override
    public String description(DishPlan plan, String panels, DoubleFunction<String> length) {
        return panels + " flat panels, " + sectors + " sectors in " + rings + (rings == 1 ? " ring" : " rings")
                + SectorPanels.atRim(largestPanel(plan), length) + RibCurve.words(curve);
    }

    @Override
    public Optional<PanelSize> largestPanel(DishPlan plan) {
        Profile profile = plan.profile();
        double rim = plan.radiusMetres();
        double[] radius = borders(plan).radius;
        double inner = radius[radius.length - 2];
        double along = Math.hypot(rim - inner, profile.height(rim) - profile.height(inner));
        return SectorPanels.size(plan, sectors, rings > 1 ? along - plan.gapMetres() : along);
    }

    @Override
    public Cut onParabola() {
        return new FlatRings(sectors, rings, spacing);
    }

    RingBorders borders(DishPlan plan) {
        return new RingBorders(rings, spacing, plan);
    }

    @Override
    public Optional<RibLayout> ribs(DishPlan plan) {
        return Optional.of(new RibLayout(sectors, false, borders(plan).radius));
    }

    /** The shorter of a panel's outer edge and its width along the rib, in plan. */
    @Override
    public double gapLimit(double diameterMetres, double hubMetres) {
        boolean bySteps = rings > 1 && spacing == RingSpacing.EQUAL_DEPTH_STEP;
        double outer = diameterMetres / 2;
        double inner = hubMetres / 2;
        double width = bySteps
                ? outer - Math.sqrt(outer * outer - (outer * outer - inner * inner) / rings)
                : (outer - inner) / rings;
        return Math.min(SectorPanels.edge(diameterMetres, sectors), width);
    }

    @Override
    public double estimatedPanels(double diameterMetres, double hubMetres, double gapMetres) {
        return (double) sectors * rings;
    }
}
