package simmerpoint.drawing.cooker;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.study.light.RayPath;

/**
 * A few rays from the sun's centre in the upright plane through the axis, reflected by the paraboloid of the ribs: to show
 * how the light goes, not to measure it. Well-aimed frame, m.
 */
final class LightPaths {
    private static final double[] PLACES = {-0.92, -0.62, 0.62, 0.92};
    private static final double LONGEST = 1.25;
    private static final int STEPS = 400;

    private final Scenario scenario;
    private final Setup setup;
    private final Vec sun;
    private final double focal;

    LightPaths(Scenario scenario) {
        this.scenario = scenario;
        setup = scenario.setup();
        sun = setup.sun().vec();
        focal = scenario.dish().focalLengthMetres();
    }

    /** All rays, from their place on the mirror to the target or beyond the focus. */
    List<RayPath> paths() {
        List<RayPath> paths = new ArrayList<>();
        double upper = scenario.dish().upperEdgeMetres();
        double lower = scenario.dish().lowerEdgeMetres();
        double middle = (upper - lower) / 2;
        double half = (upper + lower) / 2;
        for (double share : PLACES) {
            double x = middle + share * half;
            Vec place = setup.dish().toParent(new Vec(x, 0, x * x / (4 * focal)));
            Vec leaning = new Vec(-x / (2 * focal), 0, 1);
            Vec normal = setup.dish().rotation().apply(leaning.times(1 / leaning.length()));
            Vec out = normal.times(2 * normal.dot(sun)).minus(sun);
            paths.add(path(place, out));
        }
        return paths;
    }

    /** A ray until it meets the target, or to a little beyond the focus. */
    private RayPath path(Vec from, Vec direction) {
        double most = LONGEST * from.minus(new Vec(0, 0, focal)).length();
        Vec before = setup.target().fromParent(from);
        for (int k = 1; k <= STEPS; k++) {
            Vec end = from.plus(direction.times(most * k / STEPS));
            Vec now = setup.target().fromParent(end);
            if (inside(now, before)) {
                return new RayPath(sun, from, end, RayPath.Fate.CAUGHT);
            }
            before = now;
        }
        return new RayPath(sun, from, from.plus(direction.times(most)), RayPath.Fate.MISSED);
    }

    private boolean inside(Vec now, Vec before) {
        if (Math.hypot(now.x(), now.y()) > scenario.target().radiusMetres()) {
            return false;
        }
        if (scenario.target() instanceof Pan pan) {
            return now.z() >= 0 && now.z() <= pan.heightMetres();
        }
        return now.z() >= 0 != before.z() >= 0;
    }
}
