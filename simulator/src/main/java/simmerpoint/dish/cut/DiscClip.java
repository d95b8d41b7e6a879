package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;

/**
 * What a circle about the origin leaves of a convex polygon in plan: straight parts of the polygon's edges, joined by arcs of the
 * circle. Corners counter-clockwise.
 */
final class DiscClip {
    /** Corners on an arc lie no farther apart, m: at a radius of half a metre a chord is 6 µm off its arc. */
    private static final double STEP = 5e-3;

    private final double radius;
    private final List<double[]> parts = new ArrayList<>();

    /** Of the polygon with these corners. */
    DiscClip(double[] x, double[] y, double radius) {
        this.radius = radius;
        for (int k = 0; k < x.length; k++) {
            int next = (k + 1) % x.length;
            clip(x[k], y[k], x[next], y[next]);
        }
    }

    /** The part of an edge within the circle: its ends. */
    private void clip(double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        double square = dx * dx + dy * dy;
        double half = ax * dx + ay * dy;
        double root = half * half - square * (ax * ax + ay * ay - radius * radius);
        if (root <= 0) {
            return;
        }
        double from = Math.max(0, (-half - Math.sqrt(root)) / square);
        double to = Math.min(1, (-half + Math.sqrt(root)) / square);
        if (to > from) {
            parts.add(new double[] {ax + from * dx, ay + from * dy, ax + to * dx, ay + to * dy});
        }
    }

    private double[] after(int k) {
        return parts.get((k + 1) % parts.size());
    }

    /** Angle of the arc from the end of one part to the beginning of the next; 0 where they meet in a corner. */
    private double arc(int k) {
        double[] end = parts.get(k);
        double[] next = after(k);
        if (Math.hypot(next[0] - end[2], next[1] - end[3]) < 1e-12) {
            return 0;
        }
        double turn = Math.atan2(next[1], next[0]) - Math.atan2(end[3], end[2]);
        return turn < 0 ? turn + 2 * Math.PI : turn;
    }

    /** Its area: Gauss's formula for the corners, and the segments between chords and arcs, ½R²(φ − sin φ). */
    double area() {
        double twice = 0;
        for (int k = 0; k < parts.size(); k++) {
            double[] part = parts.get(k);
            double[] next = after(k);
            double arc = arc(k);
            twice += part[0] * part[3] - part[2] * part[1] + part[2] * next[1] - next[0] * part[3];
            twice += radius * radius * (arc - Math.sin(arc));
        }
        return twice / 2;
    }

    /** Corners, those on arcs at equal steps. */
    List<double[]> corners() {
        List<double[]> all = new ArrayList<>();
        for (int k = 0; k < parts.size(); k++) {
            double[] part = parts.get(k);
            all.add(new double[] {part[0], part[1]});
            double arc = arc(k);
            if (arc > 0) {
                double from = Math.atan2(part[3], part[2]);
                int steps = (int) Math.ceil(arc * radius / STEP - 1e-6);
                for (int step = 0; step < steps; step++) {
                    double angle = from + arc * step / steps;
                    all.add(new double[] {radius * Math.cos(angle), radius * Math.sin(angle)});
                }
            }
        }
        return all;
    }
}
