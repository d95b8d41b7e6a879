package simmerpoint.dish;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/**
 * How the paraboloid is cut into panels, and everything that depends on it. One class in {@code dish.cut} per cut; its
 * {@code Cuts} lists them. Every plan passed in has this cut.
 */
public interface Cut {
    /** Its word in scenario files, the keys that belong to it and its traits. */
    CutKind kind();

    /** Whether it has a trait. */
    default boolean has(CutTrait trait) {
        return kind().has(trait);
    }

    /**
     * The surface that light meets.
     *
     * @param plan the dish
     * @param sunInDish direction to the sun's centre in the dish frame: only a mesh needs it, to find its gaps
     * @throws IllegalArgumentException if no panel fits
     */
    MirrorSurface surface(DishPlan plan, Direction sunInDish);

    /**
     * The edges of all panels exactly as they are traced: gaps taken off, tiles in their tangent planes, strips bent.
     * Panel tilt and everything else that depends on the seed is left out. A panel that the gaps consume has no
     * outline.
     *
     * @return in the order of the panels' numbers; dish frame, m
     */
    List<PanelOutline> outlines(DishPlan plan);

    /**
     * The flat shapes its panels are cut to, of the very panels that {@link #outlines} gives; a bent panel is laid flat without
     * stretching it. Empty where there is nothing to cut.
     */
    default List<FlatPanel> flatPanels(DishPlan plan) {
        return outlines(plan).stream().map(outline -> flatPanel(plan, outline)).toList();
    }

    /** The flat shape that one of its panels, or a part of one, is cut to. */
    default FlatPanel flatPanel(DishPlan plan, PanelOutline outline) {
        return FlatPanel.of(outline);
    }

    /** What curve its ribs, or all of it, are cut to. */
    default Curve curve() {
        return Curve.PARABOLA;
    }

    /** The same cut to the parabola. */
    default Cut onParabola() {
        return this;
    }

    /** Whether a panel that a rim would cut through is left out altogether. */
    default boolean leavesOutCutPanels() {
        return false;
    }

    /**
     * Number, kind and size of its panels: "144 flat panels, 24 sectors in 6 rings, at the rim 15.7 cm wide and …".
     *
     * @param plan the dish
     * @param panels their number, written for the reader
     * @param length writes a length (m) in the reader's units
     */
    String description(DishPlan plan, String panels, DoubleFunction<String> length);

    /** Name of the loss that comes from panels that do not follow the paraboloid. */
    default String shapeLossName() {
        return "flat panels";
    }

    /** Size of its largest panel; empty where panels have no size of their own. */
    default Optional<PanelSize> largestPanel(DishPlan plan) {
        return Optional.empty();
    }

    /** The same as a label for drawings, lengths (m) written by {@code length}. */
    default Optional<String> panelSizeLabel(DishPlan plan, DoubleFunction<String> length) {
        return largestPanel(plan).map(size -> length.apply(size.rimMetres()) + " × " + length.apply(size.ribMetres()));
    }

    /** The ribs that carry its panels; empty if it has none. */
    default Optional<RibLayout> ribs(DishPlan plan) {
        return Optional.empty();
    }

    /** Approximate gap (m) at which some panel would vanish; only for cuts with {@link CutTrait#SEAMS}. */
    default double gapLimit(double diameterMetres, double hubMetres) {
        return Double.POSITIVE_INFINITY;
    }

    /** Approximate number of panels, for lengths (m) not yet checked; 1 where their number is limited anyway. */
    default double estimatedPanels(double diameterMetres, double hubMetres, double gapMetres) {
        return 1;
    }

    /** Whether at least one panel fits between hub and rim. */
    default boolean fits(DishPlan plan) {
        return true;
    }

    /** Distance of its outermost corner from the axis, m. */
    default double reachMetres(DishPlan plan) {
        return plan.radiusMetres();
    }

    /** Area within the rim, seen along the axis, m²: of the circle across its corners unless the rim is another. */
    default double rimArea(DishPlan plan) {
        return Math.PI * plan.radiusMetres() * plan.radiusMetres();
    }

    /** How far it reaches from the axis upwards, m; below 0 if all of it lies below the axis. */
    default double upperEdgeMetres(DishPlan plan) {
        return aperture(plan).radius() + aperture(plan).x();
    }

    /** How far it reaches from the axis downwards, m; below 0 if all of it lies above the axis. */
    default double lowerEdgeMetres(DishPlan plan) {
        return aperture(plan).radius() - aperture(plan).x();
    }

    /** Actual focal length of its panels, m; infinite or below 0 where they do not concentrate light. */
    default double focalLengthMetres(DishPlan plan) {
        return plan.focalLengthMetres();
    }

    /** How large it is; empty unless it has {@link CutTrait#OWN_SIZE}. */
    default Optional<OwnSize> ownSize() {
        return Optional.empty();
    }

    /** The circle about its mirrors, seen along the axis. */
    default Aperture aperture(DishPlan plan) {
        return Aperture.about(plan.radiusMetres());
    }

    /** Where its builder takes the focus to be, from which the moves of the pan count; dish frame, m. */
    default Vec supposedFocus(DishPlan plan) {
        return new Vec(0, 0, plan.focalLengthMetres());
    }

    /** The same cut for a builder who takes its focus to be where that of {@code planned} is. */
    default Cut supposedAs(Cut planned) {
        return this;
    }

    /** The zones it is made of, those that lie on top of others last; empty for a dish of one cut. */
    default List<Zone> zones() {
        return List.of();
    }

    /** The same with a change to each of its zones. */
    default Cut withZones(UnaryOperator<Zone> change) {
        return this;
    }

    /** Name of the file that its panels were read from. */
    default Optional<String> fileName() {
        return Optional.empty();
    }
}
