package simmerpoint.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Area of triangles seen along z, where they lie over one another counted once. */
public final class PlanArea {
    private final double[] corners;
    private final TriangleTree tree;

    /**
     * For some triangles.
     *
     * @param corners nine numbers per triangle: three corners, x y z in turn, m
     * @param tree of the same triangles
     */
    public PlanArea(double[] corners, TriangleTree tree) {
        this.corners = corners;
        this.tree = tree;
    }

    /** The area, m²: of each triangle what no later one covers. */
    public double covered() {
        double sum = 0;
        for (int t = 0; t < corners.length / 9; t++) {
            sum += uncovered(t);
        }
        return sum;
    }

    private double uncovered(int t) {
        List<double[]> pieces = List.of(triangle(t));
        for (int other : later(t)) {
            pieces = without(pieces, triangle(other));
        }
        return pieces.stream().mapToDouble(PlanArea::area).sum();
    }

    /** Triangles of higher number that have something in common with {@code t} in plan. */
    private List<Integer> later(int t) {
        List<Integer> found = new ArrayList<>();
        double[] box = box(t);
        tree.firstNear(box, near -> {
            if (near > t && PlanTriangles.overlap(corners, t, near).area() > 0) {
                found.add(near);
            }
            return false;
        });
        return found;
    }

    /** The box around a triangle in plan, without end along z. */
    private double[] box(int t) {
        double[] c = triangle(t);
        double[] box = new double[6];
        for (int a = 0; a < 2; a++) {
            box[a] = Math.min(Math.min(c[a], c[a + 2]), c[a + 4]);
            box[3 + a] = Math.max(Math.max(c[a], c[a + 2]), c[a + 4]);
        }
        box[2] = Double.NEGATIVE_INFINITY;
        box[5] = Double.POSITIVE_INFINITY;
        return box;
    }

    /** Corners x y in turn, counter-clockwise. */
    private double[] triangle(int t) {
        int at = 9 * t;
        double[] c = {corners[at], corners[at + 1], corners[at + 3], corners[at + 4], corners[at + 6], corners[at + 7]};
        return twiceArea(c) >= 0 ? c : new double[] {c[0], c[1], c[4], c[5], c[2], c[3]};
    }

    /** Convex pieces less a counter-clockwise triangle: beyond its first side, else beyond its second, else beyond its third. */
    private static List<double[]> without(List<double[]> pieces, double[] triangle) {
        List<double[]> left = new ArrayList<>();
        for (double[] piece : pieces) {
            double[] rest = piece;
            for (int side = 0; side < 6 && rest.length > 4; side += 2) {
                double[] beyond = part(rest, triangle, side, -1);
                if (beyond.length > 4) {
                    left.add(beyond);
                }
                rest = part(rest, triangle, side, 1);
            }
        }
        return left;
    }

    /** The part of a convex polygon on one side of a line: 1 to the left of the triangle's side, −1 to the right. */
    private static double[] part(double[] polygon, double[] triangle, int side, int sign) {
        double[] kept = new double[polygon.length + 4];
        int n = 0;
        int last = polygon.length - 2;
        for (int i = 0, j = last; i <= last; j = i, i += 2) {
            double here = sign * left(triangle, side, polygon[i], polygon[i + 1]);
            double before = sign * left(triangle, side, polygon[j], polygon[j + 1]);
            if (here > 0 != before > 0) {
                double share = before / (before - here);
                kept[n++] = polygon[j] + share * (polygon[i] - polygon[j]);
                kept[n++] = polygon[j + 1] + share * (polygon[i + 1] - polygon[j + 1]);
            }
            if (here > 0) {
                kept[n++] = polygon[i];
                kept[n++] = polygon[i + 1];
            }
        }
        return Arrays.copyOf(kept, n);
    }

    private static double left(double[] c, int side, double x, double y) {
        int to = (side + 2) % 6;
        return (c[to] - c[side]) * (y - c[side + 1]) - (c[to + 1] - c[side + 1]) * (x - c[side]);
    }

    private static double area(double[] polygon) {
        return 0.5 * Math.abs(twiceArea(polygon));
    }

    private static double twiceArea(double[] p) {
        double twice = 0;
        for (int i = 2; i + 3 < p.length; i += 2) {
            twice += (p[i] - p[0]) * (p[i + 3] - p[1]) - (p[i + 2] - p[0]) * (p[i + 1] - p[1]);
        }
        return twice;
    }
}
