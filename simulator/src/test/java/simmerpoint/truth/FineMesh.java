package simmerpoint.truth;

import java.util.function.DoubleBinaryOperator;
import simmerpoint.dish.mesh.Mesh;

/** Dishes as fine meshes of sectors, every corner at a height of its own: an independent way to a bent dish. */
final class FineMesh {
    private FineMesh() {}

    /**
     * A mesh.
     *
     * @param sectors how many
     * @param hub radius of the innermost corners, m
     * @param rim radius of the outermost, m
     * @param along cells from hub to rim
     * @param across cells of a sector
     * @param height of the plan point (x, y), m
     */
    static Mesh of(int sectors, double hub, double rim, int along, int across, DoubleBinaryOperator height) {
        int row = across + 1;
        double[] vertices = new double[3 * sectors * (along + 1) * row];
        int[] corners = new int[6 * sectors * along * across];
        int v = 0;
        int c = 0;
        for (int k = 0; k < sectors; k++) {
            int first = v / 3;
            for (int a = 0; a <= along; a++) {
                double r = hub + (rim - hub) * a / along;
                for (int b = 0; b <= across; b++) {
                    double t = (double) b / across;
                    double from = 2 * Math.PI * k / sectors;
                    double to = 2 * Math.PI * (k + 1) / sectors;
                    double x = r * ((1 - t) * Math.cos(from) + t * Math.cos(to));
                    double y = r * ((1 - t) * Math.sin(from) + t * Math.sin(to));
                    vertices[v++] = x;
                    vertices[v++] = y;
                    vertices[v++] = height.applyAsDouble(x, y);
                }
            }
            for (int a = 0; a < along; a++) {
                for (int b = 0; b < across; b++) {
                    int p = first + a * row + b;
                    for (int corner : new int[] {p, p + row, p + row + 1, p, p + row + 1, p + 1}) {
                        corners[c++] = corner;
                    }
                }
            }
        }
        int[] start = new int[corners.length / 3 + 1];
        for (int t = 0; t < start.length; t++) {
            start[t] = 3 * t;
        }
        return new Mesh("bent dish", vertices, corners, start);
    }
}
