package simmerpoint.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The tree against every triangle in turn. */
class TriangleTreeTest {
    private static double[] triangles(SplittableRandom random, int n, double size) {
        double[] corners = new double[9 * n];
        for (int t = 0; t < n; t++) {
            for (int a = 0; a < 3; a++) {
                double middle = random.nextDouble(-1, 1);
                for (int c = a; c < 9; c += 3) {
                    corners[9 * t + c] = middle + size * random.nextDouble(-1, 1);
                }
            }
        }
        return corners;
    }

    private static Vec corner(double[] triangles, int t, int c) {
        int at = 9 * t + 3 * c;
        return new Vec(triangles[at], triangles[at + 1], triangles[at + 2]);
    }

    /**
     * Distance to a triangle in lengths of the direction, NaN for a miss: where the plane is met, and whether that place
     * is on the same side of all three sides.
     */
    private static double distance(double[] triangles, int t, Vec o, Vec d) {
        Vec a = corner(triangles, t, 0);
        Vec b = corner(triangles, t, 1);
        Vec c = corner(triangles, t, 2);
        Vec n = b.minus(a).cross(c.minus(a));
        double s = a.minus(o).dot(n) / d.dot(n);
        Vec p = o.plus(d.times(s));
        boolean inside = n.dot(b.minus(a).cross(p.minus(a))) >= 0
                && n.dot(c.minus(b).cross(p.minus(b))) >= 0
                && n.dot(a.minus(c).cross(p.minus(c))) >= 0;
        return inside ? s : Double.NaN;
    }

    private static boolean meets(double[] triangles, int[] owners, Vec o, Vec d, double from, double to, int except) {
        return IntStream.range(0, owners.length)
                .filter(t -> owners[t] != except)
                .mapToDouble(t -> distance(triangles, t, o, d))
                .anyMatch(s -> s >= from && s <= to);
    }

    private static boolean meets(TriangleTree.Query q, Vec o, Vec d, double from, double to, int except) {
        return q.anyHit(o.x(), o.y(), o.z(), d.x(), d.y(), d.z(), from, to, except);
    }

    private static Vec any(SplittableRandom random, double reach) {
        return new Vec(
                random.nextDouble(-reach, reach), random.nextDouble(-reach, reach), random.nextDouble(-reach, reach));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4, 5, 9, 100, 700})
    void raysMeetWhatTheyMeetOneByOne(int n) {
        SplittableRandom random = new SplittableRandom(60_000 + n);
        double[] triangles = triangles(random, n, n < 50 ? 0.8 : 0.15);
        int[] owners = IntStream.range(0, n).map(t -> t / 2).toArray();
        TriangleTree tree = new TriangleTree(triangles, owners);
        TriangleTree.Query query = tree.new Query();
        int hits = 0;
        for (int i = 0; i < 3000; i++) {
            Vec o = any(random, 1.5);
            Vec d = corner(triangles, random.nextInt(n), i % 3)
                    .minus(o)
                    .plus(any(random, 0.5))
                    .times(0.7);
            double from = i % 3 == 0 ? -0.5 : 1e-9;
            double to = i % 2 == 0 ? 1e6 : random.nextDouble();
            int except = i % 4 == 0 ? random.nextInt(n) / 2 : -1;
            boolean wanted = meets(triangles, owners, o, d, from, to, except);
            hits += wanted ? 1 : 0;
            assertEquals(wanted, meets(query, o, d, from, to, except), "ray " + i);
        }
        assertTrue(hits > 50 && hits < 2950, "rays that test nothing: " + hits + " hits");
    }

    /** Rays along an axis have infinite steps across, and flat boxes make 0 × infinity of them. */
    @Test
    void raysAlongAxesMeetLevelTriangles() {
        double[] level = {0, 0, 1, 1, 0, 1, 0, 1, 1, 2, 2, 1, 3, 2, 1, 2, 3, 1};
        TriangleTree tree = new TriangleTree(level, new int[] {0, 1});
        TriangleTree.Query query = tree.new Query();
        Vec down = new Vec(0, 0, -1);
        assertTrue(meets(query, new Vec(0.2, 0.2, 5), down, 0, 10, -1));
        assertTrue(meets(query, new Vec(0, 0, 5), down, 0, 10, -1), "through a corner");
        assertFalse(meets(query, new Vec(1.5, 1.5, 5), down, 0, 10, -1));
        assertFalse(meets(query, new Vec(0.2, 0.2, 5), down, 0, 3.9, -1), "out of reach");
        assertFalse(meets(query, new Vec(0.2, 0.2, 5), down, 0, 10, 0), "left out");
        assertFalse(meets(query, new Vec(-1, 0.2, 1), new Vec(1, 0, 0), 0, 10, -1), "in the plane itself");
    }

    /** Many triangles with one middle cannot be parted by a plane and must not recurse for ever. */
    @Test
    void coincidentTrianglesAreFound() {
        double[] one = {0, 0, 0, 1, 0, 0, 0, 1, 0};
        double[] all = new double[9 * 50];
        for (int t = 0; t < 50; t++) {
            System.arraycopy(one, 0, all, 9 * t, 9);
        }
        TriangleTree tree = new TriangleTree(all, IntStream.range(0, 50).toArray());
        assertTrue(meets(tree.new Query(), new Vec(0.2, 0.2, 1), new Vec(0, 0, -1), 0, 5, 17));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 7, 300})
    void cornersBelowAPlaneAreFound(int n) {
        SplittableRandom random = new SplittableRandom(61_000 + n);
        double[] triangles = triangles(random, n, 0.2);
        TriangleTree tree = new TriangleTree(triangles, new int[n]);
        int below = 0;
        for (int i = 0; i < 2000; i++) {
            Vec normal = Direction.of(any(random, 1)).vec();
            double level = random.nextDouble(-2, i % 2 == 0 ? 1 : -0.5);
            double slack = random.nextDouble(0.3);
            boolean wanted = IntStream.range(0, 3 * n)
                    .anyMatch(c -> normal.dot(corner(triangles, c / 3, c % 3)) < level - slack);
            below += wanted ? 1 : 0;
            assertEquals(wanted, tree.anyCornerBelow(normal.x(), normal.y(), normal.z(), level, slack), "plane " + i);
        }
        assertTrue(below > 100 && below < 1900, "planes that test nothing: " + below);
    }
}
