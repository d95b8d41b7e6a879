package simmerpoint.dish.built;

import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Direction;

/** A dish as built, on which light is cast. Only {@link BuildErrors#build} makes one, so that no plan is traced. */
public final class BuiltDish {
    private final DishPlan layout;
    private final Mirror mirror;

    BuiltDish(DishPlan layout, Mirror mirror) {
        this.layout = layout;
        this.mirror = mirror;
    }

    /** The plan with the gaps as they came out. */
    public DishPlan layout() {
        return layout;
    }

    /** Its mirror, with the errors of the material and of workmanship. */
    public Mirror mirror() {
        return mirror;
    }

    /** Its surface without panel tilts; the direction to the sun's centre is in the dish frame. */
    public MirrorSurface surface(Direction sunInDish) {
        return layout.surface(sunInDish);
    }

    /** The tilt of each panel of its surface, drawn from the seed. */
    public PanelTilts panelTilts(int panels, long seed) {
        return PanelTilts.draw(panels, mirror.panelTiltRadians(), seed);
    }
}
