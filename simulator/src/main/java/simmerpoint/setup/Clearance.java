package simmerpoint.setup;

import simmerpoint.dish.MirrorSurface;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Target;

/** Distance between target and mirror. */
public final class Clearance {
    private static final int POINTS = 72;

    private Clearance() {}

    /**
     * Least height of the target's underside or disc above the mirror, m, measured along the dish's axis at its centre and
     * around its edge; infinite if it is wholly outside the dish's outline. Below 0 the target would cut into the mirror.
     */
    public static double aboveMirror(MirrorSurface surface, Setup setup, Target target) {
        Pose inDish = setup.target().in(setup.dish().inverse());
        double least = above(surface, inDish.origin());
        for (int k = 0; k < POINTS; k++) {
            double angle = 2 * Math.PI * k / POINTS;
            double r = target.radiusMetres();
            Vec edge = inDish.toParent(new Vec(r * Math.cos(angle), r * Math.sin(angle), 0));
            least = Math.min(least, above(surface, edge));
        }
        return least;
    }

    private static double above(MirrorSurface surface, Vec point) {
        if (point.x() * point.x() + point.y() * point.y() > surface.radius() * surface.radius()) {
            return Double.POSITIVE_INFINITY;
        }
        return point.z() - surface.heightAt(point.x(), point.y());
    }
}
