package simmerpoint.dish.built;

import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Direction;

/**
 * A dish as it was built: what light is cast on. Only {@link BuildErrors#build} makes one, so that a plan cannot be traced by
 * mistake.
 */
public final class BuiltDish {
    private final DishPlan layout;
    private final Mirror mirror;

    BuiltDish(DishPlan layout, Mirror mirror) {
        this.layout = layout;
        this.mirror = mirror;
    }

    /** How its panels lie: the plan, with the slits that were left between them. */
    public DishPlan layout() {
        return layout;
    }

    /** Its mirror: the material's errors and those of workmanship together. */
    public Mirror mirror() {
        return mirror;
    }

    /** Its surface, laid out for a sun in that direction of the dish frame; tilts of panels come on top. */
    public MirrorSurface surface(Direction sunInDish) {
        return layout.surface(sunInDish);
    }

    /** How each panel of its surface was glued, drawn from the seed. */
    public PanelTilts panelTilts(int panels, long seed) {
        return PanelTilts.draw(panels, mirror.panelTiltRadians(), seed);
    }
}
