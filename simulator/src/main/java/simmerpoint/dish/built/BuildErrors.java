package simmerpoint.dish.built;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.mirror.Mirror;

/**
 * Errors of a dish that follow from {@link Workmanship}: root mean squares over its mirrors, along the ribs and across
 * them. Tilt rotates a whole panel, slope varies within it. The tracer uses one figure for both directions, their root
 * mean square. Compared with traced meshes that have these errors, the watts on a pan that catches nearly all light of
 * the exact dish agree within 2 per cent for errors that cost up to some 15; beyond that, and for targets smaller than
 * the image of a panel, real errors cost less.
 *
 * <p>All formulas are derived here, for errors that are small and independent from place to place. A panel is taken as
 * the sheet that its four corners stretch, L long along the rib and w0 and w1 wide at its ends, w² = (w0² + w1²)/2.
 * Bent strips are cut into lengths of 10 cm, since a saw wanders over about a hand's width (common practice).
 *
 * <ul>
 *   <li><b>Ribs cut</b>, standard deviation s at each corner: the plane that fits the four corners best tilts by s/L
 *       along and s/w across; what is left is a twist z = k·x·y that brings s/(√3·L) along and s/(√3·w) across.
 *   <li><b>Ribs set</b>, standard deviation a of each rib's angle about its foot: along, the two ribs of a panel give
 *       a/√2 of tilt and, from one to the other, a/√6 of slope; across, the ribs stand apart by their difference times
 *       the distance d from the foot: √2·a·d/w of tilt. A rib set wrong round the axis stays on the paraboloid and costs
 *       no more than an uneven seam.
 *   <li><b>Sheet bulging or sagging</b> by h in the middle between two ribs as a parabola, each panel by itself, h growing
 *       with w²: 4h/(√3·w) of slope across. All sagging away from the light together is better than that, since the
 *       paraboloid itself lies about w²/16f behind the chord.
 *   <li><b>Panel edges</b>, standard deviation e: two neighbours leave a slit where both are short, on average
 *       e·√2/√(2π) = e/√π wide; where they are too long they overlap and are trimmed.
 *   <li><b>Bubbles</b> as caps of paraboloids, b high and d wide on the share p of the film: slopes of 8bρ/d² at ρ from
 *       their middle, 2b/d·√p per axis.
 * </ul>
 *
 * @param parts what each cause does; a cause that does nothing is missing
 */
public record BuildErrors(Map<Cause, Part> parts) {
    /** A dish built exactly as planned. */
    public static final BuildErrors NONE = new BuildErrors(Map.of());

    private static final double PER_TOLERANCE = 0.5;

    /** A cause of errors. */
    public enum Cause {
        /** Ribs' edges off the curve. */
        RIB_CUT,
        /** Ribs too steep or too flat. */
        RIB_SET,
        /** Sheet bulging or sagging between ribs. */
        SAG,
        /** Panels cut short. */
        PANEL_EDGE,
        /** Bubbles under the film. */
        BUBBLES
    }

    /**
     * What one cause does.
     *
     * @param tiltAlong rad
     * @param tiltAcross rad
     * @param slopeAlong rad
     * @param slopeAcross rad
     * @param gap mean additional gap between panels, m
     */
    public record Part(double tiltAlong, double tiltAcross, double slopeAlong, double slopeAcross, double gap) {
        /** Its errors in all directions together, per axis, rad. */
        public double perAxis() {
            double squares = tiltAlong * tiltAlong
                    + tiltAcross * tiltAcross
                    + slopeAlong * slopeAlong
                    + slopeAcross * slopeAcross;
            return Math.sqrt(squares / 2);
        }

        private boolean isSome() {
            return tiltAlong > 0 || tiltAcross > 0 || slopeAlong > 0 || slopeAcross > 0 || gap > 0;
        }
    }

    /** Keeps its own copy. */
    public BuildErrors {
        Map<Cause, Part> copy = new EnumMap<>(Cause.class);
        copy.putAll(parts);
        parts = Collections.unmodifiableMap(copy);
    }

    /** The errors of one dish. */
    public static BuildErrors of(Workmanship work, DishPlan plan) {
        Map<Cause, Part> parts = new EnumMap<>(Cause.class);
        List<RibPanel> panels = work.ofRibs() ? RibPanel.of(plan) : List.of();
        double cut = PER_TOLERANCE * work.ribCutMetres();
        double set = PER_TOLERANCE * work.ribSetRadians();
        double sag = PER_TOLERANCE * work.sagMetres();
        put(parts, Cause.RIB_CUT, overPanels(panels, panel -> panel.ribCut(cut)));
        put(parts, Cause.RIB_SET, overPanels(panels, panel -> panel.ribSet(set)));
        put(parts, Cause.SAG, overPanels(panels, panel -> panel.sag(sag)));
        double slit = plan.cut().has(CutTrait.SEAMS) ? PER_TOLERANCE * work.panelEdgeMetres() / Math.sqrt(Math.PI) : 0;
        put(parts, Cause.PANEL_EDGE, new Part(0, 0, 0, 0, slit));
        double bubbles = 2 * work.bubbleHeightMetres() / work.bubbleWidthMetres() * Math.sqrt(work.bubbledShare());
        put(parts, Cause.BUBBLES, new Part(0, 0, bubbles, bubbles, 0));
        return new BuildErrors(parts);
    }

    private static void put(Map<Cause, Part> parts, Cause cause, Part part) {
        if (part.isSome()) {
            parts.put(cause, part);
        }
    }

    /** The same without one of its causes. */
    public BuildErrors without(Cause cause) {
        Map<Cause, Part> rest = new EnumMap<>(Cause.class);
        rest.putAll(parts);
        rest.remove(cause);
        return new BuildErrors(rest);
    }

    /** All causes together: errors add in quadrature, gaps linearly. */
    public Part all() {
        double[] sum = new double[5];
        for (Part p : parts.values()) {
            sum[0] += p.tiltAlong * p.tiltAlong;
            sum[1] += p.tiltAcross * p.tiltAcross;
            sum[2] += p.slopeAlong * p.slopeAlong;
            sum[3] += p.slopeAcross * p.slopeAcross;
            sum[4] += p.gap;
        }
        return new Part(Math.sqrt(sum[0]), Math.sqrt(sum[1]), Math.sqrt(sum[2]), Math.sqrt(sum[3]), sum[4]);
    }

    /** Tilt of whole panels per axis, rad. */
    public double tilt() {
        Part all = all();
        return Math.hypot(all.tiltAlong, all.tiltAcross) / Math.sqrt(2);
    }

    /** Slope error per axis, rad. */
    public double slope() {
        Part all = all();
        return Math.hypot(all.slopeAlong, all.slopeAcross) / Math.sqrt(2);
    }

    /** The dish that a plan and its mirror become: wider gaps, and errors added in quadrature to the mirror's own. */
    public BuiltDish build(DishPlan plan, Mirror mirror) {
        if (parts.isEmpty()) {
            return new BuiltDish(plan, mirror);
        }
        return new BuiltDish(plan.withWiderGaps(all().gap).withMirrors(this::rougher), rougher(mirror));
    }

    private Mirror rougher(Mirror mirror) {
        return mirror.withSlopeError(Math.hypot(mirror.slopeErrorRadians(), slope()))
                .withPanelTilt(Math.hypot(mirror.panelTiltRadians(), tilt()));
    }

    /** Root mean squares over the area. */
    private static Part overPanels(List<RibPanel> panels, Function<RibPanel, double[]> squares) {
        double[] sum = new double[4];
        double area = 0;
        for (RibPanel panel : panels) {
            double[] of = squares.apply(panel);
            area += panel.weight();
            for (int k = 0; k < sum.length; k++) {
                sum[k] += panel.weight() * of[k];
            }
        }
        return new Part(root(sum[0], area), root(sum[1], area), root(sum[2], area), root(sum[3], area), 0);
    }

    private static double root(double sum, double area) {
        return area > 0 ? Math.sqrt(sum / area) : 0;
    }
}
