package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;

/**
 * A few rays from the sun's centre in the upright plane through the axis, reflected by the paraboloid of the ribs: to show
 * how the light goes, not to measure it. Well-aimed frame, m.
 */
final class LightPaths {
    private static final double[] PLACES = {-0.92, -0.62, 0.62, 0.92};
    private static final double START = 1.3;
    private static final double SUN_AT = 1.95;
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

    /** Where the sun is drawn. */
    Vec sunPlace() {
        return sun.times(SUN_AT * focal);
    }

    /** Where the rays begin. */
    List<Vec> starts() {
        return paths().stream().map(path -> path.get(0)).toList();
    }

    /** Every ray: its begin, its place on the mirror, its end on the target or beside it. */
    List<List<Vec>> paths() {
        List<List<Vec>> paths = new ArrayList<>();
        for (double share : PLACES) {
            double x = share * scenario.dish().radiusMetres();
            Vec place = setup.dish().toParent(new Vec(x, 0, x * x / (4 * focal)));
            Vec leaning = new Vec(-x / (2 * focal), 0, 1);
            Vec normal = setup.dish().rotation().apply(leaning.times(1 / leaning.length()));
            Vec out = normal.times(2 * normal.dot(sun)).minus(sun);
            double back = (START * focal - place.z()) / sun.z();
            paths.add(List.of(place.plus(sun.times(back)), place, place.plus(out.times(length(place, out)))));
        }
        return paths;
    }

    /** How far a ray goes until it meets the target, or a little beyond the focus. */
    private double length(Vec from, Vec direction) {
        double most = LONGEST * from.minus(new Vec(0, 0, focal)).length();
        Vec before = setup.target().fromParent(from);
        for (int k = 1; k <= STEPS; k++) {
            Vec now = setup.target().fromParent(from.plus(direction.times(most * k / STEPS)));
            if (inside(now, before)) {
                return most * k / STEPS;
            }
            before = now;
        }
        return most;
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
