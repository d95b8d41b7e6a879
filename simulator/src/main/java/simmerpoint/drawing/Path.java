package simmerpoint.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Straight lines through points, in one part or several. Filled, a part within another is a hole.
 *
 * @param parts in the order in which they are drawn
 */
public record Path(List<Part> parts) implements Shape {
    /** Keeps its own list. */
    public Path {
        parts = List.copyOf(parts);
    }

    /**
     * Points joined by lines.
     *
     * @param xs units, not changed after
     * @param ys units downwards, as many
     * @param closed whether the last point is joined to the first
     */
    public record Part(double[] xs, double[] ys, boolean closed) {}

    /** An open line through points: x and y in turn. */
    public static Path open(double... xy) {
        return new Path(List.of(part(false, xy)));
    }

    /** A closed line through corners: x and y in turn. */
    public static Path closed(double... xy) {
        return new Path(List.of(part(true, xy)));
    }

    /** An open line through points. */
    public static Path through(double[] xs, double[] ys) {
        return new Path(List.of(new Part(xs, ys, false)));
    }

    /** A line through points, each x and y. */
    public static Path through(List<double[]> points, boolean closed) {
        double[] xs = new double[points.size()];
        double[] ys = new double[points.size()];
        for (int k = 0; k < xs.length; k++) {
            xs[k] = points.get(k)[0];
            ys[k] = points.get(k)[1];
        }
        return new Path(List.of(new Part(xs, ys, closed)));
    }

    /** The same and another's parts. */
    public Path and(Path other) {
        List<Part> all = new ArrayList<>(parts);
        all.addAll(other.parts);
        return new Path(all);
    }

    /** The smallest box that holds all its points. */
    public Box bounds() {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Part part : parts) {
            for (int k = 0; k < part.xs().length; k++) {
                left = Math.min(left, part.xs()[k]);
                right = Math.max(right, part.xs()[k]);
                top = Math.min(top, part.ys()[k]);
                bottom = Math.max(bottom, part.ys()[k]);
            }
        }
        return new Box(left, top, right - left, bottom - top);
    }

    private static Part part(boolean closed, double... xy) {
        double[] xs = new double[xy.length / 2];
        double[] ys = new double[xs.length];
        for (int k = 0; k < xs.length; k++) {
            xs[k] = xy[2 * k];
            ys[k] = xy[2 * k + 1];
        }
        return new Part(xs, ys, closed);
    }
}
