package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.units.RangeCheck;

/**
 * A part of the plan, seen along the axis: what lies within a circle about the axis and within a convex polygon, and in none of
 * some convex holes. Axes are those of the dish: x towards its upper edge, y to the right.
 *
 * @param radiusMetres of the circle
 * @param corners of the polygon, counter-clockwise; empty for the whole circle
 * @param holes convex, corners counter-clockwise; they may overlap and reach beyond the rest
 * @param fromRadians angle from the upper edge, towards the right, at which it begins
 * @param spanRadians angle over which it goes on from there, seen from the axis; 2π if it goes all round
 */
public record PlanRegion(
        double radiusMetres, List<Point> corners, List<List<Point>> holes, double fromRadians, double spanRadians) {
    private static final double ROUND = 2 * Math.PI;

    /** Sides of polygons that stand for wedges lie this many radii out. */
    private static final double FAR = 4;

    private static final int STEPS = 50;
    private static final int BISECTIONS = 30;

    /** A direction along an edge belongs to both sides, rad. */
    private static final double BESIDE = 1e-6;

    /** Keeps copies; checks the radius. */
    public PlanRegion {
        RangeCheck.positive(radiusMetres, "radius");
        corners = List.copyOf(corners);
        holes = holes.stream().map(List::copyOf).toList();
    }

    /** A circle. */
    public static PlanRegion circle(double radius) {
        return new PlanRegion(radius, List.of(), List.of(), 0, ROUND);
    }

    /**
     * A regular polygon.
     *
     * @param radius of the circle beyond which nothing is left
     * @param sides 3 or more
     * @param width twice the distance of a side from the axis, m
     * @param turned angle of the middle of a side from the upper edge, towards the right, rad
     */
    public static PlanRegion regular(double radius, int sides, double width, double turned) {
        double reach = width / 2 / Math.cos(Math.PI / sides);
        List<Point> corners = new ArrayList<>();
        for (int k = 0; k < sides; k++) {
            double angle = turned + (2 * k - 1) * Math.PI / sides;
            corners.add(new Point(reach * Math.cos(angle), reach * Math.sin(angle)));
        }
        return new PlanRegion(radius, corners, List.of(), 0, ROUND);
    }

    /** The part between two angles from the upper edge, towards the right, rad; the second is above the first by at most 2π. */
    public PlanRegion between(double from, double to) {
        double span = to - from;
        if (span >= ROUND) {
            return this;
        }
        if (span <= Math.PI) {
            return within(wedge(from, to)).seenFrom(from, span);
        }
        return without(wedge(to, from + ROUND)).seenFrom(from, span);
    }

    private PlanRegion seenFrom(double from, double span) {
        return new PlanRegion(radiusMetres, corners, holes, from, span);
    }

    private List<Point> wedge(double from, double to) {
        double far = FAR * radiusMetres;
        List<Point> wedge = new ArrayList<>(List.of(new Point(0, 0)));
        for (int k = 0; k <= 3; k++) {
            double angle = from + (to - from) * k / 3;
            wedge.add(new Point(far * Math.cos(angle), far * Math.sin(angle)));
        }
        return wedge;
    }

    /** What of it lies within another convex polygon, corners counter-clockwise. */
    public PlanRegion within(List<Point> convex) {
        List<Point> both = corners.isEmpty() ? convex : ConvexPolygon.common(corners, convex);
        if (both.size() < 3) {
            return without(square());
        }
        return new PlanRegion(radiusMetres, both, holes, fromRadians, spanRadians);
    }

    /** What a convex hole, corners counter-clockwise, leaves of it. */
    public PlanRegion without(List<Point> hole) {
        List<List<Point>> more = new ArrayList<>(holes);
        more.add(hole);
        return new PlanRegion(radiusMetres, corners, more, fromRadians, spanRadians);
    }

    /**
     * What a slot leaves of it.
     *
     * @param width across, m
     * @param length from its edge there towards the axis, m
     * @param at angle of its middle from the upper edge, towards the right, rad
     */
    public PlanRegion withSlot(double width, double length, double at) {
        double cos = Math.cos(at);
        double sin = Math.sin(at);
        double inner = Math.max(0, reach(at) - length);
        double outer = FAR * radiusMetres;
        return without(List.of(
                along(inner, -width / 2, cos, sin),
                along(outer, -width / 2, cos, sin),
                along(outer, width / 2, cos, sin),
                along(inner, width / 2, cos, sin)));
    }

    /** How far it reaches from the axis in a direction, holes aside, m; 0 if none of it lies there. */
    double reach(double angle) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double reach = radiusMetres;
        for (int k = 0; k < corners.size(); k++) {
            Point a = corners.get(k);
            Point b = corners.get((k + 1) % corners.size());
            double outwards = (b.y() - a.y()) * cos - (b.x() - a.x()) * sin;
            if (outwards > BESIDE * a.distance(b)) {
                reach = Math.min(reach, ((b.y() - a.y()) * a.x() - (b.x() - a.x()) * a.y()) / outwards);
            }
        }
        return Math.max(0, reach);
    }

    private static Point along(double out, double across, double cos, double sin) {
        return new Point(out * cos - across * sin, out * sin + across * cos);
    }

    /** What it has in common with another. */
    public PlanRegion common(PlanRegion other) {
        PlanRegion narrower = other.spanRadians < spanRadians ? other : this;
        PlanRegion all = new PlanRegion(
                Math.min(radiusMetres, other.radiusMetres), corners, holes, narrower.fromRadians, narrower.spanRadians);
        all = other.corners.isEmpty() ? all : all.within(other.corners);
        for (List<Point> hole : other.holes) {
            all = all.without(hole);
        }
        return all;
    }

    /** Whether it is the whole circle. */
    public boolean isCircle() {
        return corners.isEmpty() && holes.isEmpty();
    }

    /** Whether a place belongs to it. */
    public boolean contains(double x, double y) {
        return x * x + y * y <= radiusMetres * radiusMetres
                && (corners.isEmpty() || ConvexPolygon.contains(corners, x, y))
                && holes.stream().noneMatch(hole -> ConvexPolygon.contains(hole, x, y));
    }

    /**
     * How far out it reaches in so many directions at equal angles, the first towards the upper edge, then towards the right: the greatest
     * distance from the axis between two, m; 0 where none of it lies between them.
     */
    List<Double> ends(int count, double from, double to) {
        return IntStream.range(0, count)
                .mapToObj(k -> end(2 * Math.PI * k / count, from, to))
                .toList();
    }

    private double end(double angle, double from, double to) {
        if (holds(angle, to)) {
            return to;
        }
        for (int step = STEPS - 1; step >= 0; step--) {
            double inside = from + (to - from) * (step + 0.5) / STEPS;
            if (holds(angle, inside)) {
                return end(angle, inside, Math.min(to, inside + (to - from) / STEPS), BISECTIONS);
            }
        }
        return 0;
    }

    private double end(double angle, double inside, double outside, int left) {
        double middle = (inside + outside) / 2;
        return left == 0
                ? middle
                : holds(angle, middle) ? end(angle, middle, outside, left - 1) : end(angle, inside, middle, left - 1);
    }

    private boolean holds(double angle, double r) {
        return contains(r * Math.cos(angle - BESIDE), r * Math.sin(angle - BESIDE))
                || contains(r * Math.cos(angle + BESIDE), r * Math.sin(angle + BESIDE));
    }

    /** Its area, m². */
    public double area() {
        return areaWithin(List.of());
    }

    /** The area, m², that it has in common with a polygon, corners counter-clockwise; with none of its own for an empty one. */
    public double areaWithin(List<Point> polygon) {
        List<Point> both =
                polygon.isEmpty() ? corners : corners.isEmpty() ? polygon : ConvexPolygon.common(polygon, corners);
        return polygon.isEmpty() && corners.isEmpty() ? areaLess(square(), holes) : areaLess(both, holes);
    }

    /** Of a polygon within the circle, without holes: of each what the later ones have not taken. */
    private double areaLess(List<Point> polygon, List<List<Point>> without) {
        if (polygon.size() < 3) {
            return 0;
        }
        double area = DiscClip.of(polygon, radiusMetres).area();
        for (int k = 0; k < without.size(); k++) {
            area -= areaLess(ConvexPolygon.common(polygon, without.get(k)), without.subList(k + 1, without.size()));
        }
        return area;
    }

    /** Whether all corners of a polygon, and with them all of it, lie in the circle and in the polygon and clear of all holes. */
    boolean covers(List<Point> polygon) {
        return polygon.stream()
                        .allMatch(p -> Math.hypot(p.x(), p.y()) <= radiusMetres * (1 + 1e-12)
                                && (corners.isEmpty() || ConvexPolygon.contains(corners, p.x(), p.y())))
                && holes.stream()
                        .allMatch(hole -> ConvexPolygon.common(polygon, hole).size() < 3);
    }

    /** The parts of a polygon that lie in it: corners counter-clockwise, arcs as corners close together. */
    List<Polygon> clip(List<Point> polygon) {
        List<Point> kept = corners.isEmpty() ? polygon : ConvexPolygon.common(polygon, corners);
        if (kept.size() < 3) {
            return List.of();
        }
        List<Point> round = DiscClip.of(kept, radiusMetres).points();
        return round.size() < 3 ? List.of() : PlanDifference.of(round, holes);
    }

    /** Its own outline, as many parts as it has. */
    public List<Polygon> outline() {
        return clip(square());
    }

    /** All round the circle. */
    private List<Point> square() {
        double half = FAR * radiusMetres;
        return List.of(new Point(-half, -half), new Point(half, -half), new Point(half, half), new Point(-half, half));
    }

    /** Area of all of them together, m², where they lie over one another counted once. */
    static double unionArea(List<PlanRegion> regions) {
        double sum = 0;
        for (int k = 0; k < regions.size(); k++) {
            sum += areaOutside(regions.get(k), regions.subList(k + 1, regions.size()));
        }
        return sum;
    }

    private static double areaOutside(PlanRegion region, List<PlanRegion> others) {
        double area = region.area();
        for (int k = 0; k < others.size(); k++) {
            area -= areaOutside(region.common(others.get(k)), others.subList(k + 1, others.size()));
        }
        return area;
    }
}
