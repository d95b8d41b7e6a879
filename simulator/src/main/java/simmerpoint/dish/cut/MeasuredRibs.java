package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
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
import simmerpoint.dish.Zone;
import simmerpoint.dish.shape.DeformedSurface;
import simmerpoint.dish.shape.RibHeights;
import simmerpoint.dish.shape.RuledDeformation;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;
import simmerpoint.sampling.MonotoneCubic;

/**
 * The panels of another cut on ribs that are not as planned. Between two ribs a panel is ruled by straight lines that join points at
 * equal distance from the axis. Sheet that is bent and not stretched would join points whose slopes along the ribs are equal; where
 * those of two ribs differ by Δ the two surfaces are up to fΔ²/4 apart midway, and lean by up to fΔ²/w at a rib, w the width there
 * (derived here: the lines shift by 2fΔ along a curve of radius 2f): 0.02 mm and 0.8 mrad for 10 mrad, 0.8 m and 10 cm.
 *
 * @param panels the cut as planned
 * @param radii distances from the axis at which ribs were measured, rising, m
 * @param heights of each rib above its plan there, m; ribs in the order of sectors
 */
public record MeasuredRibs(Cut panels, List<Double> radii, List<List<Double>> heights) implements Cut {
    /** Keeps copies; refuses a cut without ribs. */
    public MeasuredRibs {
        if (!panels.has(CutTrait.RIBS) || panels instanceof MeasuredRibs) {
            throw new IllegalArgumentException("ribs cannot be measured on " + panels);
        }
        radii = List.copyOf(radii);
        heights = heights.stream().map(List::copyOf).toList();
    }

    /** The dish with its ribs as planned; the same dish where they are. */
    public static DishPlan mended(DishPlan plan) {
        return plan.cut() instanceof MeasuredRibs ribs ? plan.withCut(ribs.panels) : plan;
    }

    /** The same with one rib as planned; ribs count from 0. */
    public MeasuredRibs withRibMended(int rib) {
        List<List<Double>> others = new ArrayList<>(heights);
        others.set(rib, radii.stream().map(r -> 0.0).toList());
        return new MeasuredRibs(panels, radii, others);
    }

    /** The same ribs under other panels of the same layout. */
    MeasuredRibs under(Cut other) {
        return new MeasuredRibs(other, radii, heights);
    }

    private DishPlan inner(DishPlan plan) {
        return plan.withCut(panels);
    }

    /** What ribs as measured do, their heights joined by smooth curves. */
    RuledDeformation deformation(DishPlan plan) {
        RibLayout layout = ribs(plan).orElseThrow();
        if (heights.size() != layout.sectors()) {
            throw new IllegalArgumentException(heights.size() + " ribs measured of " + layout.sectors());
        }
        return new RuledDeformation(layout, curves());
    }

    private RibHeights curves() {
        double[] x = array(radii);
        MonotoneCubic[] ribs =
                heights.stream().map(rib -> new MonotoneCubic(x, array(rib))).toArray(MonotoneCubic[]::new);
        return (rib, r) -> new RibHeights.RibPlace(ribs[rib].at(r), ribs[rib].slopeAt(r));
    }

    private static double[] array(List<Double> numbers) {
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Override
    public CutKind kind() {
        return panels.kind();
    }

    @Override
    public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
        return new DeformedSurface(deformation(plan), plan.hubMetres() / 2, panels.surface(inner(plan), sunInDish));
    }

    @Override
    public List<PanelOutline> outlines(DishPlan plan) {
        RuledDeformation off = deformation(plan);
        return panels.outlines(inner(plan)).stream()
                .map(o -> new PanelOutline(
                        o.panel(),
                        o.edge().stream()
                                .map(p -> p.plus(
                                        new Vec(0, 0, off.at(p.x(), p.y()).height())))
                                .toList(),
                        o.hole()))
                .toList();
    }

    @Override
    public List<FlatPanel> flatPanels(DishPlan plan) {
        return panels.flatPanels(inner(plan));
    }

    @Override
    public String description(DishPlan plan, String count, DoubleFunction<String> length) {
        return panels.description(inner(plan), count, length) + ", on ribs as measured";
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
    public double rimArea(DishPlan plan) {
        return panels.rimArea(inner(plan));
    }

    @Override
    public double upperEdgeMetres(DishPlan plan) {
        return panels.upperEdgeMetres(inner(plan));
    }

    @Override
    public double lowerEdgeMetres(DishPlan plan) {
        return panels.lowerEdgeMetres(inner(plan));
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
        return under(panels.onParabola());
    }

    @Override
    public Cut withZones(UnaryOperator<Zone> change) {
        return under(panels.withZones(change));
    }

    @Override
    public Optional<RibLayout> ribs(DishPlan plan) {
        return panels.ribs(inner(plan));
    }

    @Override
    public double gapLimit(double diameterMetres, double hubMetres) {
        return panels.gapLimit(diameterMetres, hubMetres);
    }

    /** Greatest height of a rib above or below its plan, m. */
    public double farthestOff(int rib) {
        return heights.get(rib).stream().mapToDouble(Math::abs).max().orElse(0);
    }

    /** Greatest difference of the slopes of two neighbouring ribs, rad: what the error of the ruled surface comes from. */
    public double slopeDifference(DishPlan plan) {
        RuledDeformation off = deformation(plan);
        return IntStream.range(0, heights.size())
                .mapToDouble(off::slopeDifference)
                .max()
                .orElse(0);
    }
}
