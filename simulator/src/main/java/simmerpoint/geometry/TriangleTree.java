package simmerpoint.geometry;

import java.util.function.IntPredicate;

/**
 * A bounding volume hierarchy of axis-aligned boxes over triangles, for ray intersection. Read by any number of threads,
 * each with its own {@link Query}. Split at the centre of the longest side of the box of the triangles' centroids (common
 * practice); leaves hold up to four triangles.
 */
public final class TriangleTree {
    private static final int LEAF = 4;

    private final double[] box;
    private final int[] first;
    private final int[] count;
    private final double[] corner;
    private final int[] owner;
    /** Four numbers per node: the mean normal of its triangles and the least n·p of their corners along it. */
    private final double[] slab;

    private int nodes;

    private final double[] source;
    private final int[] order;

    /**
     * A tree over triangles.
     *
     * @param triangles nine numbers each: three corners, x y z in turn, m; not kept
     * @param owners the panel each triangle belongs to
     */
    public TriangleTree(double[] triangles, int[] owners) {
        int n = owners.length;
        source = triangles;
        order = new int[n];
        for (int i = 0; i < n; i++) {
            order[i] = i;
        }
        box = new double[6 * Math.max(1, 2 * n)];
        first = new int[Math.max(1, 2 * n)];
        count = new int[Math.max(1, 2 * n)];
        slab = new double[4 * count.length];
        nodes = 1;
        split(0, 0, n);
        corner = new double[9 * n];
        owner = new int[n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(triangles, 9 * order[i], corner, 9 * i, 9);
            owner[i] = owners[order[i]];
        }
    }

    private void split(int node, int from, int to) {
        computeBox(node, from, to);
        computeSlab(node, from, to);
        if (to - from <= LEAF) {
            first[node] = from;
            count[node] = to - from;
            return;
        }
        int axis = longestAxis(from, to);
        double middle = 0.5 * (bound(from, to, axis, false) + bound(from, to, axis, true));
        int cut = partition(from, to, axis, middle);
        if (cut == from || cut == to) {
            cut = (from + to) / 2;
        }
        int left = nodes;
        nodes += 2;
        first[node] = left;
        split(left, from, cut);
        split(left + 1, cut, to);
    }

    private void computeBox(int node, int from, int to) {
        for (int a = 0; a < 3; a++) {
            double min = Double.POSITIVE_INFINITY;
            double max = Double.NEGATIVE_INFINITY;
            for (int i = from; i < to; i++) {
                for (int c = a; c < 9; c += 3) {
                    min = Math.min(min, source[9 * order[i] + c]);
                    max = Math.max(max, source[9 * order[i] + c]);
                }
            }
            box[6 * node + a] = min;
            box[6 * node + 3 + a] = max;
        }
    }

    private void computeSlab(int node, int from, int to) {
        double nx = 0;
        double ny = 0;
        double nz = 0;
        for (int i = from; i < to; i++) {
            int at = 9 * order[i];
            double ax = source[at + 3] - source[at];
            double ay = source[at + 4] - source[at + 1];
            double az = source[at + 5] - source[at + 2];
            double bx = source[at + 6] - source[at];
            double by = source[at + 7] - source[at + 1];
            double bz = source[at + 8] - source[at + 2];
            // Twice the area, to the side that faces +z.
            double up = Math.signum(ax * by - ay * bx);
            nx += up * (ay * bz - az * by);
            ny += up * (az * bx - ax * bz);
            nz += up * (ax * by - ay * bx);
        }
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        double scale = length > 0 ? 1 / length : 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = from; i < to; i++) {
            for (int at = 9 * order[i]; at < 9 * order[i] + 9; at += 3) {
                least = Math.min(least, scale * (nx * source[at] + ny * source[at + 1] + nz * source[at + 2]));
            }
        }
        slab[4 * node] = scale * nx;
        slab[4 * node + 1] = scale * ny;
        slab[4 * node + 2] = scale * nz;
        slab[4 * node + 3] = least;
    }

    private double centroid(int i, int axis) {
        int at = 9 * order[i] + axis;
        return (source[at] + source[at + 3] + source[at + 6]) / 3;
    }

    private double bound(int from, int to, int axis, boolean upper) {
        double best = centroid(from, axis);
        for (int i = from + 1; i < to; i++) {
            best = upper ? Math.max(best, centroid(i, axis)) : Math.min(best, centroid(i, axis));
        }
        return best;
    }

    private int longestAxis(int from, int to) {
        int best = 0;
        double length = -1;
        for (int a = 0; a < 3; a++) {
            double side = bound(from, to, a, true) - bound(from, to, a, false);
            if (side > length) {
                length = side;
                best = a;
            }
        }
        return best;
    }

    private int partition(int from, int to, int axis, double middle) {
        int cut = from;
        for (int i = from; i < to; i++) {
            if (centroid(i, axis) < middle) {
                int swap = order[i];
                order[i] = order[cut];
                order[cut++] = swap;
            }
        }
        return cut;
    }

    /**
     * The first triangle whose own box meets a box and that is wanted, by its number as given; −1 if there is none.
     *
     * @param reach the box: least x, y and z, then largest, m
     */
    public int firstNear(double[] reach, IntPredicate wanted) {
        return firstNear(0, reach, wanted);
    }

    private int firstNear(int node, double[] reach, IntPredicate wanted) {
        for (int a = 0; a < 3; a++) {
            if (box[6 * node + a] > reach[3 + a] || box[6 * node + 3 + a] < reach[a]) {
                return -1;
            }
        }
        if (count[node] == 0) {
            int left = firstNear(first[node], reach, wanted);
            return left >= 0 ? left : firstNear(first[node] + 1, reach, wanted);
        }
        for (int i = first[node]; i < first[node] + count[node]; i++) {
            if (meets(9 * i, reach) && wanted.test(order[i])) {
                return order[i];
            }
        }
        return -1;
    }

    private boolean meets(int at, double[] reach) {
        for (int a = at; a < at + 3; a++) {
            double least = Math.min(Math.min(corner[a], corner[a + 3]), corner[a + 6]);
            double most = Math.max(Math.max(corner[a], corner[a + 3]), corner[a + 6]);
            if (least > reach[3 + a - at] || most < reach[a - at]) {
                return false;
            }
        }
        return true;
    }

    /** Ray queries. Not thread-safe. */
    public final class Query {
        private final int[] stack = new int[128];

        /**
         * Whether the ray hits a triangle that does not belong to {@code except}.
         *
         * @param ox start, m
         * @param oy start, m
         * @param oz start, m
         * @param dx direction, any length
         * @param dy direction
         * @param dz direction
         * @param from least distance in lengths of the direction
         * @param to largest distance in lengths of the direction
         * @param except owner to ignore, or −1 for none
         */
        public boolean anyHit(
                double ox, double oy, double oz, double dx, double dy, double dz, double from, double to, int except) {
            double ix = 1 / dx;
            double iy = 1 / dy;
            double iz = 1 / dz;
            int top = 0;
            stack[top++] = 0;
            while (top > 0) {
                int node = stack[--top];
                if (!hitsBox(node, ox, oy, oz, ix, iy, iz, from, to)) {
                    continue;
                }
                if (count[node] == 0) {
                    stack[top++] = first[node];
                    stack[top++] = first[node] + 1;
                    continue;
                }
                for (int i = first[node]; i < first[node] + count[node]; i++) {
                    if (owner[i] != except && hitsTriangle(9 * i, ox, oy, oz, dx, dy, dz, from, to)) {
                        return true;
                    }
                }
            }
            return false;
        }
    }

    private boolean hitsBox(
            int node, double ox, double oy, double oz, double ix, double iy, double iz, double from, double to) {
        int b = 6 * node;
        double x0 = (box[b] - ox) * ix;
        double x1 = (box[b + 3] - ox) * ix;
        double y0 = (box[b + 1] - oy) * iy;
        double y1 = (box[b + 4] - oy) * iy;
        double z0 = (box[b + 2] - oz) * iz;
        double z1 = (box[b + 5] - oz) * iz;
        double enter = Math.max(Math.max(lesser(x0, x1), lesser(y0, y1)), Math.max(lesser(z0, z1), from));
        double leave = Math.min(Math.min(greater(x0, x1), greater(y0, y1)), Math.min(greater(z0, z1), to));
        return enter <= leave * (1 + 1e-12) + 1e-12;
    }

    /** The lesser of two; minus infinity where a ray in the plane of a flat box gives 0·∞. */
    private static double lesser(double a, double b) {
        double m = a < b ? a : b;
        return Double.isNaN(a) || Double.isNaN(b) ? Double.NEGATIVE_INFINITY : m;
    }

    private static double greater(double a, double b) {
        double m = a > b ? a : b;
        return Double.isNaN(a) || Double.isNaN(b) ? Double.POSITIVE_INFINITY : m;
    }

    /** Whether the ray hits a triangle: T. Möller and B. Trumbore 1997, J. Graphics Tools 2(1) 21-28 (from memory). */
    private boolean hitsTriangle(
            int at, double ox, double oy, double oz, double dx, double dy, double dz, double from, double to) {
        double ax = corner[at + 3] - corner[at];
        double ay = corner[at + 4] - corner[at + 1];
        double az = corner[at + 5] - corner[at + 2];
        double bx = corner[at + 6] - corner[at];
        double by = corner[at + 7] - corner[at + 1];
        double bz = corner[at + 8] - corner[at + 2];
        double px = dy * bz - dz * by;
        double py = dz * bx - dx * bz;
        double pz = dx * by - dy * bx;
        double det = ax * px + ay * py + az * pz;
        if (det == 0) {
            return false;
        }
        double tx = ox - corner[at];
        double ty = oy - corner[at + 1];
        double tz = oz - corner[at + 2];
        double u = (tx * px + ty * py + tz * pz) / det;
        if (!(u >= 0 && u <= 1)) {
            return false;
        }
        double qx = ty * az - tz * ay;
        double qy = tz * ax - tx * az;
        double qz = tx * ay - ty * ax;
        double v = (dx * qx + dy * qy + dz * qz) / det;
        if (!(v >= 0 && u + v <= 1)) {
            return false;
        }
        double t = (bx * qx + by * qy + bz * qz) / det;
        return t >= from && t <= to;
    }

    /**
     * Whether any corner lies below a plane by more than {@code slack}.
     *
     * @param nx normal of the plane, unit
     * @param ny normal
     * @param nz normal
     * @param level n·p of the plane's points p, m
     * @param slack m
     */
    public boolean anyCornerBelow(double nx, double ny, double nz, double level, double slack) {
        return anyCornerBelow(0, nx, ny, nz, level - slack);
    }

    private boolean anyCornerBelow(int node, double nx, double ny, double nz, double level) {
        if (leastInBox(node, nx, ny, nz) >= level) {
            return false;
        }
        // Near a panel of a bowl, boxes reach below its plane though no corner does: the slab between shows it.
        int m = 4 * node;
        double turned = leastInBox(node, nx - slab[m], ny - slab[m + 1], nz - slab[m + 2]);
        if (slab[m + 3] + turned >= level) {
            return false;
        }
        if (count[node] == 0) {
            return anyCornerBelow(first[node], nx, ny, nz, level) || anyCornerBelow(first[node] + 1, nx, ny, nz, level);
        }
        for (int i = 9 * first[node]; i < 9 * (first[node] + count[node]); i += 3) {
            if (nx * corner[i] + ny * corner[i + 1] + nz * corner[i + 2] < level) {
                return true;
            }
        }
        return false;
    }

    /** The least n·p of the points p of a node's box. */
    private double leastInBox(int node, double nx, double ny, double nz) {
        int b = 6 * node;
        return nx * box[nx > 0 ? b : b + 3] + ny * box[ny > 0 ? b + 1 : b + 4] + nz * box[nz > 0 ? b + 2 : b + 5];
    }
}
