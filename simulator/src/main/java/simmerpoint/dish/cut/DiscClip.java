package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.geometry.Point;

/**
 * What a circle about the origin leaves of a convex polygon in plan: straight parts of the polygon's edges, joined by arcs of the
 * circle. Corners counter-clockwise.
 */
final class DiscClip {
    /** Corners on an arc lie no farther apart, m: at a radius of half a metre a chord is 6 µm off its arc. */
    private static final double STEP = 5e-3;

    /** Two ends on the circle are in the wrong order by no more than this, rad. */
    private static final double ROUNDING = 1e-9;

    private final double radius;
    private final List<double[]> parts = new ArrayList<>();
    private final boolean whole;

    /** Of the polygon with these corners. */
    DiscClip(double[] x, double[] y, double radius) {
        this.radius = radius;
        for (int k = 0; k < x.length; k++) {
            int next = (k + 1) % x.length;
            clip(x[k], y[k], x[next], y[next]);
        }
        whole = parts.isEmpty() && x.length > 2 && PlanPolygon.distanceFromOrigin(x, y) == 0;
    }

    /** Of a polygon with these corners. */
    static DiscClip of(List<Point> corners, double radius) {
        return new DiscClip(
                corners.stream().mapToDouble(Point::x).toArray(),
                corners.stream().mapToDouble(Point::y).toArray(),
                radius);
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
        return turn < -ROUNDING ? turn + 2 * Math.PI : Math.max(0, turn);
    }

    /** Its area: Gauss's formula for the corners, and the segments between chords and arcs, ½R²(φ − sin φ). */
    double area() {
        double twice = whole ? 2 * Math.PI * radius * radius : 0;
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
        if (whole) {
            addArc(0, 2 * Math.PI, all);
        }
        for (int k = 0; k < parts.size(); k++) {
            double[] part = parts.get(k);
            all.add(new double[] {part[0], part[1]});
            double arc = arc(k);
            if (arc > 0) {
                addArc(Math.atan2(part[3], part[2]), arc, all);
            }
        }
        return all;
    }

    private void addArc(double from, double arc, List<double[]> all) {
        int steps = (int) Math.ceil(arc * radius / STEP - 1e-6);
        for (int step = 0; step < steps; step++) {
            double angle = from + arc * step / steps;
            all.add(new double[] {radius * Math.cos(angle), radius * Math.sin(angle)});
        }
    }

    /** The same as points, one for corners that coincide. */
    List<Point> points() {
        List<Point> points = new ArrayList<>();
        for (double[] corner : corners()) {
            Point p = new Point(corner[0], corner[1]);
            if (points.isEmpty() || points.get(points.size() - 1).distance(p) > 1e-12) {
                points.add(p);
            }
        }
        return points;
    }
}
