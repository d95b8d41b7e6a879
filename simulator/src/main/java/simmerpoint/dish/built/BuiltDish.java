package simmerpoint.dish.built;

import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Direction;

/** A dish as built, on which light is cast. Only {@link BuildErrors#build} makes one, so that no plan is traced. */
public final class BuiltDish {
    private final DishPlan layout;
    private final Mirror mirror;
    private final Mask mask;
    private final double[] turns;

    BuiltDish(DishPlan layout, Mirror mirror) {
        this(layout, mirror, Mask.NONE, new double[0]);
    }

    private BuiltDish(DishPlan layout, Mirror mirror, Mask mask, double[] turns) {
        this.layout = layout;
        this.mirror = mirror;
        this.mask = mask;
        this.turns = turns;
    }

    /** The same dish with part of its mirror covered. */
    public BuiltDish covered(Mask other) {
        return new BuiltDish(layout, mirror, other, turns);
    }

    /**
     * The same dish with its panels turned besides as they are glued.
     *
     * @param rotations of each panel by its number three parts, dish frame, rad
     */
    public BuiltDish turned(double[] rotations) {
        return new BuiltDish(layout, mirror, mask, rotations.clone());
    }

    /** The plan with the gaps as they came out. */
    public DishPlan layout() {
        return layout;
    }

    /** Its mirror, with the errors of the material and of workmanship. */
    public Mirror mirror() {
        return mirror;
    }

    /** What covers part of it. */
    public Mask mask() {
        return mask;
    }

    /** Its surface without panel tilts; the direction to the sun's centre is in the dish frame. */
    public MirrorSurface surface(Direction sunInDish) {
        MirrorSurface bare = layout.surface(sunInDish);
        return mask.isThere() ? new CoveredSurface(bare, mask, layout.radiusMetres()) : bare;
    }

    /** The tilt of each panel of its surface: drawn from the seed, and turned besides. */
    public PanelTilts panelTilts(int panels, long seed) {
        return PanelTilts.draw(panels, mirror.panelTiltRadians(), seed).and(turns);
    }
}
