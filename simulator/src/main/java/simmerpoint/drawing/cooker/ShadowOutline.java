package simmerpoint.drawing.cooker;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import org.apache.commons.math3.geometry.euclidean.twod.hull.MonotoneChain;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.setup.TargetOutline;

/** Where the target's shadow lies on the dish, seen along the axis. */
public final class ShadowOutline {
    private static final double SAME = 1e-9;
    private static final int STEPS = 3;

    private ShadowOutline() {}

    /** Corners (x, y) of the convex outline, dish frame, m: the target's edges cast along the sun's rays onto the paraboloid. */
    public static List<double[]> of(Scenario scenario) {
        Setup setup = scenario.setup();
        Vec sun = setup.sunInDish().vec();
        double f = scenario.dish().focalLengthMetres();
        List<double[]> points = new ArrayList<>();
        for (Vec edge : TargetOutline.of(scenario.target(), setup).points()) {
            Vec p = setup.dish().fromParent(edge);
            double x = p.x();
            double y = p.y();
            for (int k = 0; k < STEPS; k++) {
                double height = (x * x + y * y) / (4 * f);
                double back = (p.z() - height) / sun.z();
                x = p.x() - back * sun.x();
                y = p.y() - back * sun.y();
            }
            points.add(new double[] {x, y});
        }
        return hull(points);
    }

    /** Corners of the smallest convex outline about points, each x and y. */
    static List<double[]> hull(List<double[]> points) {
        List<Vector2D> all = points.stream().map(Vector2D::new).toList();
        return new MonotoneChain(false, SAME)
                .findHullVertices(all).stream().map(Vector2D::toArray).toList();
    }
}
