package simmerpoint.workshop;

import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;

/**
 * What is lost where the slightly curved long edges of a strip are cut straight from corner to corner.
 *
 * @param bulge greatest distance of the true edge from that straight line, m; above 0 where the strip bulges outwards
 * @param areaShare change of its area ÷ its area
 */
public record StripEdges(double bulge, double areaShare) {
    /** Of a strip with its axis along x or y; both long edges are alike. */
    public static StripEdges of(Polygon strip) {
        double bulge = 0;
        int from = 0;
        int to = 0;
        double best = 0;
        for (int k = 0; k < strip.size(); k++) {
            int end = runEnd(strip, k);
            double length = strip.corner(k).distance(strip.corner(end));
            if (end - k > 1 && length > best) {
                best = length;
                from = k;
                to = end;
            }
        }
        double between = 0;
        for (int k = from; k < to; k++) {
            Point a = strip.corner(k);
            Point b = strip.corner(k + 1);
            Point start = strip.corner(from);
            between += cross(start, a, b) / 2;
            double off = best > 0 ? cross(start, strip.corner(to), a) / best : 0;
            bulge = Math.abs(off) > Math.abs(bulge) ? off : bulge;
        }
        return new StripEdges(-bulge, -2 * between / strip.area());
    }

    /** The corner at which the run of nearly straight edges that begins at {@code k} ends. */
    private static int runEnd(Polygon strip, int k) {
        int end = k + 1;
        while (end - k < strip.size() && turn(strip, end) < 0.05) {
            end++;
        }
        return end;
    }

    private static double turn(Polygon strip, int k) {
        Point before = strip.corner(k - 1);
        Point at = strip.corner(k);
        Point after = strip.corner(k + 1);
        return Math.abs(cross(before, at, after) / (before.distance(at) * at.distance(after)));
    }

    private static double cross(Point o, Point a, Point b) {
        return (a.x() - o.x()) * (b.y() - o.y()) - (a.y() - o.y()) * (b.x() - o.x());
    }
}
