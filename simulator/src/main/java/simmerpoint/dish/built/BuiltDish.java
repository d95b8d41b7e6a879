package simmerpoint.dish.built;

import java.util.List;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.Zone;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.dish.shape.ShapeErrors;
import simmerpoint.geometry.Direction;

/** A dish as built, on which light is cast. Only {@link BuildErrors#build} makes one, so that no plan is traced. */
public final class BuiltDish {
    private final DishPlan layout;
    private final Mirror mirror;
    private final ShapeErrors shape;
    private final double elevation;
    private final Mask mask;
    private final double[] turns;

    BuiltDish(DishPlan layout, Mirror mirror) {
        this(layout, mirror, ShapeErrors.NONE, 0, Mask.NONE, new double[0]);
    }

    private BuiltDish(DishPlan layout, Mirror mirror, ShapeErrors shape, double elevation, Mask mask, double[] turns) {
        this.layout = layout;
        this.mirror = mirror;
        this.shape = shape;
        this.elevation = elevation;
        this.mask = mask;
        this.turns = turns;
    }

    /** The same dish with part of its mirror covered. */
    public BuiltDish covered(Mask other) {
        return new BuiltDish(layout, mirror, shape, elevation, other, turns);
    }

    /**
     * The same dish with its panels turned besides as they are glued.
     *
     * @param rotations of each panel by its number three parts, dish frame, rad
     */
    public BuiltDish turned(double[] rotations) {
        return new BuiltDish(layout, mirror, shape, elevation, mask, rotations.clone());
    }

    /** The same dish in another shape, its axis pointing so high, rad. */
    public BuiltDish shaped(ShapeErrors other, double axisElevation) {
        return new BuiltDish(layout, mirror, other, other.byWeight() ? axisElevation : 0, mask, turns);
    }

    /** How its shape differs from the plan. */
    public ShapeErrors shape() {
        return shape;
    }

    /** How high its axis points, rad; 0 where its shape does not depend on that. */
    public double weighedElevation() {
        return elevation;
    }

    /** The plan with the gaps as they came out. */
    public DishPlan layout() {
        return layout;
    }

    /** Its mirror, with the errors of the material and of workmanship. */
    public Mirror mirror() {
        return mirror;
    }

    /** The mirror of each zone, in their order; one where the dish has no zones. */
    public List<Mirror> mirrors() {
        return layout.mirrors(mirror);
    }

    /** Whether any of its panels are glued crooked. */
    public boolean hasTiltedPanels() {
        return mirrors().stream().anyMatch(each -> each.panelTiltRadians() > 0);
    }

    /** What the mirrors make of the light on them. */
    public MirrorShares shares() {
        List<Zone> zones = layout.cut().zones();
        return zones.isEmpty()
                ? MirrorShares.of(mirror)
                : new MirrorShares(zones.stream().map(Zone::name).toList(), mirrors());
    }

    /** What covers part of it. */
    public Mask mask() {
        return mask;
    }

    /** Its surface without panel tilts; the direction to the sun's centre is in the dish frame. */
    public MirrorSurface surface(Direction sunInDish) {
        MirrorSurface bare = shape.deform(layout, layout.surface(sunInDish), elevation);
        return mask.isThere() ? new CoveredSurface(bare, mask, layout.aperture()) : bare;
    }

    /** The tilt of each panel of its surface, drawn from the seed, and turned besides. */
    public PanelTilts panelTilts(MirrorSurface surface, long seed) {
        double[] sigmas =
                mirrors().stream().mapToDouble(Mirror::panelTiltRadians).toArray();
        return PanelTilts.draw(surface.panels(), surface.zones(), sigmas, seed).and(turns);
    }
}
