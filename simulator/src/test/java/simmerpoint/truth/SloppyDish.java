package simmerpoint.truth;

import java.util.Random;
import simmerpoint.dish.mesh.Mesh;

/** Flat-ring dishes really built with a maker's errors, as fine meshes: an independent way to what workmanship does. */
final class SloppyDish {
    private static final int FINE = 4;

    private final double focal;
    private final double hub;
    private final double rim;
    private final int sectors;
    private final int rings;

    SloppyDish(double focal, double hub, double rim, int sectors, int rings) {
        this.focal = focal;
        this.hub = hub;
        this.rim = rim;
        this.sectors = sectors;
        this.rings = rings;
    }

    /** Builds one with errors of the given standard deviations: rib cut m, rib set rad, sag at the rim m. */
    Mesh build(double cut, double set, double sag, Random random) {
        double[][][] corner = new double[sectors][rings + 1][];
        for (int k = 0; k < sectors; k++) {
            double pitch = set * random.nextGaussian();
            for (int j = 0; j <= rings; j++) {
                corner[k][j] = corner(k, j, cut * random.nextGaussian(), pitch);
            }
        }
        double[] vertices = new double[3 * sectors * rings * (FINE + 1) * (FINE + 1)];
        int[] corners = new int[3 * 2 * sectors * rings * FINE * FINE];
        int v = 0;
        int c = 0;
        for (int k = 0; k < sectors; k++) {
            for (int j = 0; j < rings; j++) {
                double bulge = sag * random.nextGaussian();
                int first = v / 3;
                for (int a = 0; a <= FINE; a++) {
                    for (int b = 0; b <= FINE; b++) {
                        double[] p = place(corner, k, j, a / (double) FINE, b / (double) FINE, bulge);
                        System.arraycopy(p, 0, vertices, v, 3);
                        v += 3;
                    }
                }
                c = triangles(corners, c, first);
            }
        }
        int[] start = new int[corners.length / 3 + 1];
        for (int t = 0; t < start.length; t++) {
            start[t] = 3 * t;
        }
        return new Mesh("sloppy dish", vertices, corners, start);
    }

    private static int triangles(int[] corners, int from, int first) {
        int c = from;
        for (int a = 0; a < FINE; a++) {
            for (int b = 0; b < FINE; b++) {
                int p = first + a * (FINE + 1) + b;
                for (int vertex : new int[] {p, p + FINE + 1, p + FINE + 2, p, p + FINE + 2, p + 1}) {
                    corners[c++] = vertex;
                }
            }
        }
        return c;
    }

    private double radius(int j) {
        return hub + (rim - hub) * j / rings;
    }

    /** Corner on rib k: off the curve by {@code off} along its normal, then the rib turned about its foot. */
    private double[] corner(int k, int j, double off, double pitch) {
        double r = radius(j);
        double slope = r / (2 * focal);
        double per = 1 / Math.sqrt(1 + slope * slope);
        double x = r - off * slope * per - hub;
        double z = r * r / (4 * focal) + off * per - hub * hub / (4 * focal);
        double tx = x * Math.cos(pitch) - z * Math.sin(pitch) + hub;
        double tz = x * Math.sin(pitch) + z * Math.cos(pitch) + hub * hub / (4 * focal);
        double angle = 2 * Math.PI * k / sectors;
        return new double[] {tx * Math.cos(angle), tx * Math.sin(angle), tz};
    }

    /** Place on the sheet between four corners, straight from rib to rib but for its bulge. */
    private double[] place(double[][][] corner, int k, int j, double along, double across, double bulge) {
        double[] p = new double[3];
        int next = (k + 1) % sectors;
        for (int d = 0; d < 3; d++) {
            double left = corner[k][j][d] * (1 - along) + corner[k][j + 1][d] * along;
            double right = corner[next][j][d] * (1 - along) + corner[next][j + 1][d] * along;
            p[d] = left * (1 - across) + right * across;
        }
        double r = (radius(j) * (1 - along) + radius(j + 1) * along) / rim;
        p[2] += bulge * r * r * 4 * across * (1 - across);
        return p;
    }
}
