package simmerpoint.dish.cut;

import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;

/** What holes leave of a polygon in plan, by the areas of the JDK. */
final class PlanDifference {
    /** Smaller shreds are rounding, m². */
    private static final double LEAST = 1e-10;

    private PlanDifference() {}

    /** The parts that are left, corners counter-clockwise; a hole within the polygon is not cut out, since no rim makes one. */
    static List<Polygon> of(List<Point> polygon, List<List<Point>> holes) {
        if (holes.stream().allMatch(hole -> ConvexPolygon.common(polygon, hole).size() < 3)) {
            return List.of(new Polygon(polygon));
        }
        Area area = new Area(PlanPaths.of(polygon));
        holes.forEach(hole -> area.subtract(new Area(PlanPaths.of(hole))));
        List<Polygon> parts = new ArrayList<>();
        PlanPaths.edges(area).forEach(edge -> add(edge.corners(), parts));
        return parts;
    }

    private static void add(List<Point> corners, List<Polygon> parts) {
        List<Point> kept = new ArrayList<>(corners);
        if (kept.size() > 3 && kept.get(0).distance(kept.get(kept.size() - 1)) < 1e-12) {
            kept.remove(kept.size() - 1);
        }
        if (kept.size() < 3) {
            return;
        }
        Polygon part = new Polygon(kept);
        if (Math.abs(part.area()) > LEAST) {
            parts.add(part.area() > 0 ? part : new Polygon(reversed(kept)));
        }
    }

    private static List<Point> reversed(List<Point> corners) {
        List<Point> reversed = new ArrayList<>(corners);
        Collections.reverse(reversed);
        return reversed;
    }
}
