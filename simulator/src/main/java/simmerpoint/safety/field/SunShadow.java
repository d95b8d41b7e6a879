package simmerpoint.safety.field;

import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.target.TargetIntersection;

/** Where the yard lies in the shadow of the dish or of its pan, and what of it is within the pan. Not thread-safe. */
final class SunShadow {
    private final Pan vessel;
    private final TargetIntersection pan;
    private final Bowl bowl;
    private final FrameMap toDish;
    private final FrameMap toTarget;
    private final Vec sunInTarget;
    private final double[] sun;
    private final double[] p = new double[3];

    SunShadow(Scenario scenario, boolean panStands) {
        Setup setup = scenario.setup();
        Yard yard = Yard.of(scenario);
        vessel = panStands && scenario.target() instanceof Pan standing ? standing : null;
        pan = new TargetIntersection(scenario.target());
        bowl = new Bowl(scenario.dish());
        toDish = new FrameMap(v -> setup.dish().fromParent(yard.wellAimed(v)));
        toTarget = new FrameMap(v -> setup.target().fromParent(yard.wellAimed(v)));
        sunInTarget = setup.sunInTarget().vec();
        Vec s = setup.sunInDish().vec();
        sun = new double[] {s.x(), s.y(), s.z()};
    }

    /** Whether a place of the yard lies within the pan. */
    boolean inPan(Vec place) {
        if (vessel == null) {
            return false;
        }
        toTarget.point(place.x(), place.y(), place.z(), p);
        return p[2] >= 0 && p[2] <= vessel.heightMetres() && Math.hypot(p[0], p[1]) <= vessel.radiusMetres();
    }

    /** Whether the sun's middle is seen from a place of the yard. */
    boolean isLit(Vec place) {
        toDish.point(place.x(), place.y(), place.z(), p);
        if (bowl.hides(p, sun)) {
            return false;
        }
        if (vessel == null) {
            return true;
        }
        toTarget.point(place.x(), place.y(), place.z(), p);
        return pan.distance(new Vec(p[0], p[1], p[2]), sunInTarget).isEmpty();
    }
}
