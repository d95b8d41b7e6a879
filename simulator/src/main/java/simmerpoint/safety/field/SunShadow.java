package simmerpoint.safety.field;

import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.target.TargetIntersection;

/** Where the yard lies in the shadow of the dish or of its pan. Not thread-safe. */
final class SunShadow {
    private final Scenario scenario;
    private final boolean panStands;
    private final TargetIntersection pan;
    private final Bowl bowl;
    private final Setup setup;
    private final Yard yard;
    private final Vec sunInTarget;
    private final double[] sun;

    SunShadow(Scenario scenario, boolean panStands) {
        this.scenario = scenario;
        this.panStands = panStands && scenario.target() instanceof Pan;
        pan = new TargetIntersection(scenario.target());
        bowl = new Bowl(scenario.dish());
        setup = scenario.setup();
        yard = Yard.of(scenario);
        sunInTarget = setup.sunInTarget().vec();
        Vec s = setup.sunInDish().vec();
        sun = new double[] {s.x(), s.y(), s.z()};
    }

    /** Whether a place of the yard lies within the pan. */
    boolean inPan(Vec place) {
        if (!(panStands && scenario.target() instanceof Pan vessel)) {
            return false;
        }
        Vec in = setup.target().fromParent(yard.wellAimed(place));
        return in.z() >= 0 && in.z() <= vessel.heightMetres() && Math.hypot(in.x(), in.y()) <= vessel.radiusMetres();
    }

    /** Whether the sun's middle is seen from a place of the yard. */
    boolean isLit(Vec place) {
        Vec wellAimed = yard.wellAimed(place);
        Vec inDish = setup.dish().fromParent(wellAimed);
        if (bowl.hides(new double[] {inDish.x(), inDish.y(), inDish.z()}, sun)) {
            return false;
        }
        return !panStands
                || pan.distance(setup.target().fromParent(wellAimed), sunInTarget)
                        .isEmpty();
    }
}
