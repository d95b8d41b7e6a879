package simmerpoint.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Path;
import simmerpoint.study.aim.AimMap;

/** A map of aims as a smooth surface: cubic between its points (Catmull and Rom's pieces, from memory). */
final class AimField {
    private static final int FINE = 240;

    private final double[][] watts;
    private final double first;
    private final double step;
    private final int n;

    AimField(AimMap map) {
        watts = map.watts();
        n = watts.length;
        first = map.radians()[0];
        step = map.radians()[1] - first;
    }

    /** Watts at (up, side), rad; NaN where a neighbour is missing. */
    double at(double up, double side) {
        double r = Math.max(0, Math.min(n - 1.0, (up - first) / step));
        double c = Math.max(0, Math.min(n - 1.0, (side - first) / step));
        int row = Math.min(n - 2, (int) r);
        int column = Math.min(n - 2, (int) c);
        double t = r - row;
        double s = c - column;
        double cubic = piece(
                t,
                along(row - 1, column, s),
                along(row, column, s),
                along(row + 1, column, s),
                along(row + 2, column, s));
        if (Double.isFinite(cubic)) {
            return cubic;
        }
        return (1 - t) * ((1 - s) * watts[row][column] + s * watts[row][column + 1])
                + t * ((1 - s) * watts[row + 1][column] + s * watts[row + 1][column + 1]);
    }

    private double along(int row, int column, double s) {
        double[] line = watts[clamped(row)];
        return piece(
                s,
                line[clamped(column - 1)],
                line[clamped(column)],
                line[clamped(column + 1)],
                line[clamped(column + 2)]);
    }

    private int clamped(int k) {
        return Math.max(0, Math.min(n - 1, k));
    }

    private static double piece(double t, double a, double b, double c, double d) {
        return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
    }

    double last() {
        return first + (n - 1) * step;
    }

    double first() {
        return first;
    }

    /**
     * The line at {@code level} W in a box: side to the right, up upwards. Squares of a fine grid are cut by straight lines, each
     * corner of which lies on an edge where the level is passed.
     */
    Path isoline(double level, Box box) {
        List<Path.Part> parts = new ArrayList<>();
        double[][] grid = new double[FINE + 1][FINE + 1];
        for (int i = 0; i <= FINE; i++) {
            for (int j = 0; j <= FINE; j++) {
                grid[i][j] = at(angle(FINE - i), angle(j)) - level;
            }
        }
        for (int i = 0; i < FINE; i++) {
            for (int j = 0; j < FINE; j++) {
                cut(parts, grid, i, j, box);
            }
        }
        return new Path(parts);
    }

    private double angle(int k) {
        return first + (last() - first) * k / FINE;
    }

    private static void cut(List<Path.Part> parts, double[][] grid, int i, int j, Box box) {
        int[][] corners = {{i, j}, {i, j + 1}, {i + 1, j + 1}, {i + 1, j}, {i, j}};
        double[] last = null;
        for (int k = 0; k < 4; k++) {
            double a = grid[corners[k][0]][corners[k][1]];
            double b = grid[corners[k + 1][0]][corners[k + 1][1]];
            if (a >= 0 == b >= 0 || Double.isNaN(a) || Double.isNaN(b)) {
                continue;
            }
            double t = a / (a - b);
            double down = (corners[k][0] + t * (corners[k + 1][0] - corners[k][0])) / FINE;
            double right = (corners[k][1] + t * (corners[k + 1][1] - corners[k][1])) / FINE;
            double[] place = {box.x() + right * box.width(), box.y() + down * box.height()};
            if (last == null) {
                last = place;
            } else {
                parts.add(new Path.Part(new double[] {last[0], place[0]}, new double[] {last[1], place[1]}, false));
                last = null;
            }
        }
    }
}
