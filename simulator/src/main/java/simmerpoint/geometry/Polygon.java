package simmerpoint.geometry;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A closed shape with straight edges in a plane.
 *
 * @param corners in order, counter-clockwise, the last joined to the first
 */
public record Polygon(List<Point> corners) {
    /** Keeps a copy of the list; refuses fewer than three corners. */
    public Polygon {
        corners = List.copyOf(corners);
        if (corners.size() < 3) {
            throw new IllegalArgumentException("a polygon of " + corners.size() + " corners");
        }
    }

    /** Number of corners. */
    public int size() {
        return corners.size();
    }

    /** A corner; numbers run round. */
    public Point corner(int k) {
        return corners.get(Math.floorMod(k, corners.size()));
    }

    /** Area, m² (Gauss's shoelace formula). */
    public double area() {
        double twice = 0;
        for (int k = 0; k < size(); k++) {
            Point a = corner(k);
            Point b = corner(k + 1);
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }

    /** Middle of its area (any text on statics). */
    public Point centroid() {
        double x = 0;
        double y = 0;
        for (int k = 0; k < size(); k++) {
            Point a = corner(k);
            Point b = corner(k + 1);
            double twice = a.x() * b.y() - b.x() * a.y();
            x += twice * (a.x() + b.x());
            y += twice * (a.y() + b.y());
        }
        double six = 6 * area();
        return new Point(x / six, y / six);
    }

    /** Whether a point lies inside: a line from it to one side crosses the edges an odd number of times. */
    public boolean contains(double x, double y) {
        boolean inside = false;
        for (int k = 0; k < size(); k++) {
            Point a = corner(k);
            Point b = corner(k + 1);
            boolean crosses = a.y() > y != b.y() > y;
            if (crosses && x < a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Length of the edge from corner k to the next, m. */
    public double edge(int k) {
        return corner(k).distance(corner(k + 1));
    }

    /** Least x, m. */
    public double left() {
        return corners.stream().mapToDouble(Point::x).min().orElseThrow();
    }

    /** Least y, m. */
    public double foot() {
        return corners.stream().mapToDouble(Point::y).min().orElseThrow();
    }

    /** From least to greatest x, m. */
    public double width() {
        return corners.stream().mapToDouble(Point::x).max().orElseThrow() - left();
    }

    /** From least to greatest y, m. */
    public double height() {
        return corners.stream().mapToDouble(Point::y).max().orElseThrow() - foot();
    }

    /** The same moved. */
    public Polygon moved(double dx, double dy) {
        return map(p -> new Point(p.x() + dx, p.y() + dy));
    }

    /** The same turned counter-clockwise about the origin, rad. */
    public Polygon turned(double radians) {
        double cos = Math.cos(radians);
        double sin = Math.sin(radians);
        return map(p -> new Point(cos * p.x() - sin * p.y(), sin * p.x() + cos * p.y()));
    }

    /** The same with its least x and y at 0. */
    public Polygon atOrigin() {
        return moved(-left(), -foot());
    }

    /** The same at the origin, turned so that one edge is level and the box around it is smallest, its width at least its height. */
    public Polygon inSmallestBox() {
        double[] x = corners.stream().mapToDouble(Point::x).toArray();
        double[] y = corners.stream().mapToDouble(Point::y).toArray();
        double least = width() * height();
        double turn = 0;
        for (int k = 0; k < size(); k++) {
            double cos = Math.cos(-direction(k));
            double sin = Math.sin(-direction(k));
            double box = extent(x, y, cos, -sin) * extent(x, y, sin, cos);
            if (box < (1 - 1e-9) * least) {
                least = box;
                turn = -direction(k);
            }
        }
        Polygon best = turn == 0 ? this : turned(turn);
        return (best.height() > best.width() * (1 + 1e-9) ? best.turned(-Math.PI / 2) : best).atOrigin();
    }

    /** How far points reach along a direction. */
    private static double extent(double[] x, double[] y, double alongX, double alongY) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < x.length; k++) {
            double along = alongX * x[k] + alongY * y[k];
            least = Math.min(least, along);
            most = Math.max(most, along);
        }
        return most - least;
    }

    private double direction(int k) {
        return Math.atan2(
                corner(k + 1).y() - corner(k).y(), corner(k + 1).x() - corner(k).x());
    }

    /** Whether another can be laid on it, unturned side up, with no corner off by more than about {@code metres}. */
    public boolean sameShape(Polygon other, double metres) {
        for (int shift = 0; other.size() == size() && shift < size(); shift++) {
            if (sameFrom(other, shift, metres)) {
                return true;
            }
        }
        return false;
    }

    private boolean sameFrom(Polygon other, int shift, double metres) {
        for (int k = 0; k < size(); k++) {
            double across = corner(k).distance(corner(k + 2));
            double otherAcross = other.corner(k + shift).distance(other.corner(k + shift + 2));
            if (Math.abs(edge(k) - other.edge(k + shift)) > metres || Math.abs(across - otherAcross) > metres) {
                return false;
            }
        }
        return true;
    }

    private Polygon map(UnaryOperator<Point> move) {
        return new Polygon(corners.stream().map(move).toList());
    }
}
