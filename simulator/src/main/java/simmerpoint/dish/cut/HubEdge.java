package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;

/**
 * The edge of a hub to which tiles are cut: a polygon about the hub's circle, as straight cuts make it. Nothing of a tile is left
 * within the circle, and at most half a thousandth of its radius of what is outside is cut away.
 */
final class HubEdge {
    private static final int SIDES = 96;

    private final double radius2;
    private final double reach2;
    private final List<Point> corners = new ArrayList<>();

    /** Of a hub of that radius, m; 0 for none. */
    HubEdge(double radius) {
        double reach = radius / Math.cos(Math.PI / SIDES);
        radius2 = radius * radius;
        reach2 = reach * reach;
        for (int k = 0; k < SIDES && radius > 0; k++) {
            double angle = 2 * Math.PI * k / SIDES;
            corners.add(new Point(reach * Math.cos(angle), reach * Math.sin(angle)));
        }
    }

    /** Whether a place lies within it. */
    boolean contains(double x, double y) {
        double r2 = x * x + y * y;
        return r2 < reach2 && (r2 < radius2 || ConvexPolygon.contains(corners, x, y));
    }

    /** Area, m², of what it takes from a tile, corners counter-clockwise. */
    double taken(List<Point> tile) {
        if (isFar(tile)) {
            return 0;
        }
        List<Point> both = ConvexPolygon.common(tile, corners);
        return both.size() < 3 ? 0 : new Polygon(both).area();
    }

    /** Whether a tile is too far off to be cut, as most are: its nearest corner farther than it is round. */
    private boolean isFar(List<Point> tile) {
        double nearest = Double.POSITIVE_INFINITY;
        double round = Math.sqrt(reach2);
        for (int k = 0; k < tile.size(); k++) {
            nearest = Math.min(nearest, Math.hypot(tile.get(k).x(), tile.get(k).y()));
            round += tile.get(k).distance(tile.get((k + 1) % tile.size()));
        }
        return isNone() || nearest > round;
    }

    /** Whether there is no hub. */
    boolean isNone() {
        return corners.isEmpty();
    }

    /** The parts of a tile that it leaves. */
    List<Polygon> parts(List<Point> tile) {
        return isNone() ? List.of(new Polygon(tile)) : PlanDifference.of(tile, List.of(corners));
    }
}
