package simmerpoint.dish.points;

import java.util.Arrays;
import java.util.List;
import simmerpoint.geometry.Point;

/**
 * The shape of a mirror as measured: its height and slopes on a square lattice as fine as the points lie, from {@link LocalQuadratic}s, and
 * between the nodes by bilinear slopes. Those of a paraboloid are linear, so it comes out exactly, heights as well. Its vertex is at 0. Where no
 * point is near, it has a hole. Never changes.
 */
public final class MeasuredShape {
    private static final int LEAST_ACROSS = 48;
    private static final int MOST_NODES = 400_000;
    private static final int PER_NODE = 3;
    private static final int PARTS = 8;

    /** A node farther from the nearest point than this many times the distance of that from its third neighbour is in a hole. */
    private static final double HOLE = 2.5;

    /** The same where the points lie on a square grid. */
    private static final double HOLE_IN_GRID = 1.5;

    /** Half of the points of a grid are as far from their third neighbours, but for this share. */
    private static final double ALIKE = 0.02;

    private static final int NEIGHBOUR = 3;

    private final String name;
    private final ConvexOutline outline;
    private final double[] circle;
    private final double focalLength;
    private final double left;
    private final double bottom;
    private final double step;
    private final int across;
    private final int up;
    private final int points;
    private final float[] nodes;
    private final double off;
    private final double mirrorArea;
    private final MeasuredPoints measured;
    private final double apart;
    private AxisFit axis;
    private MeasuredShape straightened;

    /**
     * Of points.
     *
     * @param name what to call them in messages
     * @param measured the points, whatever their origin
     */
    public MeasuredShape(String name, MeasuredPoints measured) {
        this(name, measured, 0);
    }

    /**
     * Of points some of which are means of several.
     *
     * @param name what to call them in messages
     * @param measured the points, whatever their origin
     * @param apart the most by which heights measured at one place differ, m
     */
    MeasuredShape(String name, MeasuredPoints measured, double apart) {
        this.name = name;
        this.apart = apart;
        this.measured = measured;
        BestParaboloid found = BestParaboloid.of(measured);
        this.points = measured.count();
        MeasuredPoints moved = measured.movedBy(-found.vertexX(), -found.vertexY(), -found.vertexZ());
        focalLength = found.focalLength();
        outline = new ConvexOutline(moved);
        circle = outline.circle();
        left = outline.corners.stream().mapToDouble(Point::x).min().orElse(0);
        bottom = outline.corners.stream().mapToDouble(Point::y).min().orElse(0);
        double width = outline.corners.stream().mapToDouble(Point::x).max().orElse(0) - left;
        double height = outline.corners.stream().mapToDouble(Point::y).max().orElse(0) - bottom;
        double fine = Math.sqrt(outline.area / points);
        step = Math.max(Math.sqrt(width * height / MOST_NODES), Math.min(fine, Math.min(width, height) / LEAST_ACROSS));
        up = 2 + (int) (height / step);
        across = 2 + (int) (width / step);
        nodes = new float[PER_NODE * across * up];
        off = lay(moved, new BestParaboloid(0, 0, 0, found.focalLength()));
        mirrorArea = outline.area - holes();
    }

    /** Works out every node; the root mean square of what the points differ from the paraboloid, m. */
    private double lay(MeasuredPoints points, BestParaboloid best) {
        LocalQuadratic local = new LocalQuadratic(points, best, new NearestPoints(points.x(), points.y()));
        double[] spacing = new double[points.count()];
        double[] found = new double[PER_NODE];
        double squares = 0;
        for (int i = 0; i < spacing.length; i++) {
            local.at(points.x()[i], points.y()[i], -1, found);
            spacing[i] = local.distance(NEIGHBOUR);
            squares += Math.pow(points.z()[i] - best.heightAt(points.x()[i], points.y()[i]), 2);
        }
        double reach = isGrid(spacing) ? HOLE_IN_GRID : HOLE;
        for (int i = 0; i < across; i++) {
            for (int j = 0; j < up; j++) {
                local.at(left + i * step, bottom + j * step, -1, found);
                boolean hole = local.distance(0) > reach * Math.max(step, spacing[local.nearest()]);
                for (int k = 0; k < PER_NODE; k++) {
                    nodes[PER_NODE * (i * up + j) + k] = hole ? Float.NaN : (float) found[k];
                }
            }
        }
        return Math.sqrt(squares / spacing.length);
    }

    private static boolean isGrid(double[] spacing) {
        double[] sorted = spacing.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length * 3 / 4] < (1 + ALIKE) * sorted[sorted.length / 4];
    }

    /** Area of the holes within the outline, m²; at its border counted by small squares. */
    private double holes() {
        double area = 0;
        double small = step / PARTS;
        double[] found = new double[PER_NODE];
        for (int i = 0; i < across - 1; i++) {
            for (int j = 0; j < up - 1; j++) {
                double x = left + i * step;
                double y = bottom + j * step;
                if (at(x + step / 2, y + step / 2, found)) {
                    continue;
                }
                for (int k = 0; k < PARTS * PARTS; k++) {
                    int row = k / PARTS;
                    boolean inside = outline.contains(x + (k % PARTS + 0.5) * small, y + (row + 0.5) * small);
                    area += inside ? small * small : 0;
                }
            }
        }
        return area;
    }

    /** Height, slope along x and slope along y at a place within the outline; false in a hole. */
    public boolean at(double x, double y, double[] out) {
        double right = (x - left) / step;
        double above = (y - bottom) / step;
        int i = Math.max(0, Math.min(across - 2, (int) right));
        int j = Math.max(0, Math.min(up - 2, (int) above));
        double a = right - i;
        double b = above - j;
        int node = PER_NODE * (i * up + j);
        int next = node + PER_NODE * up;
        double w00 = (1 - a) * (1 - b);
        double w01 = (1 - a) * b;
        double w10 = a * (1 - b);
        double w11 = a * b;
        double p00 = nodes[node + 1];
        double p01 = nodes[node + 4];
        double p10 = nodes[next + 1];
        double p11 = nodes[next + 4];
        double q00 = nodes[node + 2];
        double q01 = nodes[node + 5];
        double q10 = nodes[next + 2];
        double q11 = nodes[next + 5];
        out[1] = w00 * p00 + w01 * p01 + w10 * p10 + w11 * p11;
        out[2] = w00 * q00 + w01 * q01 + w10 * q10 + w11 * q11;
        // Each node's tangent plane at half of its rise: exact for a quadratic, since what the planes lack is what
        // their slopes gain.
        out[0] = w00 * (nodes[node] + step / 2 * (a * p00 + b * q00))
                + w01 * (nodes[node + 3] + step / 2 * (a * p01 + (b - 1) * q01))
                + w10 * (nodes[next] + step / 2 * ((a - 1) * p10 + b * q10))
                + w11 * (nodes[next + 3] + step / 2 * ((a - 1) * p11 + (b - 1) * q11));
        return !Double.isNaN(out[0]);
    }

    /** Puts the place of the outline for a pair of numbers of the unit square into place {@code i} of two arrays, m. */
    public void place(double u, double v, double[] toX, double[] toY, int i) {
        outline.place(u, v, toX, toY, i);
    }

    /** Whether a place lies within the outline. */
    public boolean contains(double x, double y) {
        return outline.contains(x, y);
    }

    /** Whether its axis is along z, which it is taken to be; found when it is first asked for. */
    public synchronized AxisFit axis() {
        if (axis == null) {
            axis = AxisFit.of(measured);
        }
        return axis;
    }

    /** The same turned so that the axis of the paraboloid nearest to it is along z. */
    public synchronized MeasuredShape straightened() {
        if (straightened == null) {
            straightened = new MeasuredShape(name, axis().straightened(measured), apart);
        }
        return straightened;
    }

    /** What to call it in messages. */
    public String name() {
        return name;
    }

    /** How many points were measured. */
    public int points() {
        return points;
    }

    /** Corners of the outline in plan, counter-clockwise. */
    public List<Point> corners() {
        return outline.corners;
    }

    /** The smallest circle about the outline: x and y of its middle and its radius, m. The array is not modified. */
    public double[] circle() {
        return circle;
    }

    /** Area within the outline in plan, m². */
    public double outlineArea() {
        return outline.area;
    }

    /** The same without holes, m². */
    public double mirrorArea() {
        return mirrorArea;
    }

    /** Focal length of the paraboloid nearest to the points, m; below 0 or infinite if they do not gather light. */
    public double focalLength() {
        return focalLength;
    }

    /** How far the points are off that paraboloid, root mean square, m. */
    public double offParaboloid() {
        return off;
    }

    /** Standard deviation of that focal length, by how far the points are off, m. */
    public double focalDeviation() {
        return BestParaboloid.of(measured).focalDeviation(measured);
    }

    /** By how much the slopes differ from those of that paraboloid, root mean square over the mirror, m/m. */
    public double slopesOffParaboloid() {
        double squares = 0;
        int count = 0;
        for (int i = 0; i < across; i++) {
            for (int j = 0; j < up; j++) {
                double x = left + i * step;
                double y = bottom + j * step;
                int node = PER_NODE * (i * up + j);
                if (outline.contains(x, y) && !Float.isNaN(nodes[node])) {
                    squares += Math.pow(nodes[node + 1] - x / (2 * focalLength), 2)
                            + Math.pow(nodes[node + 2] - y / (2 * focalLength), 2);
                    count++;
                }
            }
        }
        return count > 0 ? Math.sqrt(squares / count) : 0;
    }

    /** The most by which heights measured at one place differ, m; 0 where none was measured twice. */
    public double apart() {
        return apart;
    }

    /** Largest angle between a normal and the axis, rad. */
    public double steepestSlope() {
        double most = 0;
        for (int node = 0; node < nodes.length; node += PER_NODE) {
            double slope = Math.hypot(nodes[node + 1], nodes[node + 2]);
            most = slope > most ? slope : most;
        }
        return Math.atan(most);
    }
}
