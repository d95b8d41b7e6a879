package simmerpoint.setup;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;

/**
 * The circles that bound a target, for drawings: evenly spaced points in order, the first on the target frame's +x side;
 * well-aimed frame, m.
 *
 * @param underside edge of the underside, or of a bare disc
 * @param lid edge of the lid, point for point above the underside's; empty for a bare disc
 */
public record TargetOutline(List<Vec> underside, List<Vec> lid) {
    private static final int POINTS = 96;

    /** Keeps copies of the lists. */
    public TargetOutline {
        underside = List.copyOf(underside);
        lid = List.copyOf(lid);
    }

    /** The outline of {@code target} in {@code setup}. */
    public static TargetOutline of(Target target, Setup setup) {
        return new TargetOutline(
                circle(target, setup, 0),
                target instanceof Pan pan ? circle(target, setup, pan.heightMetres()) : List.of());
    }

    private static List<Vec> circle(Target target, Setup setup, double height) {
        List<Vec> points = new ArrayList<>(POINTS);
        for (int k = 0; k < POINTS; k++) {
            double angle = 2 * Math.PI * k / POINTS;
            double r = target.radiusMetres();
            points.add(setup.target().toParent(new Vec(r * Math.cos(angle), r * Math.sin(angle), height)));
        }
        return points;
    }

    /** Both circles' points together. */
    public List<Vec> points() {
        List<Vec> all = new ArrayList<>(underside);
        all.addAll(lid);
        return all;
    }
}
