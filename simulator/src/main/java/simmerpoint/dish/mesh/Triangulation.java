package simmerpoint.dish.mesh;

import java.util.Arrays;

/**
 * Cuts plane polygons into triangles that cover the same area once. Convex polygons become a fan about their first
 * corner; others are clipped ear by ear (G. H. Meisters, Polygons have ears, American Mathematical Monthly 82 (1975)
 * 648-651: every simple polygon with more than three corners has two). Collinear corners
 * make no triangle of their own, so there are at most corners − 2 triangles; their areas add up to the
 * polygon's to rounding. The work grows with the cube of the corners at worst.
 */
public final class Triangulation {
    private final PolygonOutline outline;
    private final int[] before;
    private final int[] after;
    private final int[] triangles;
    private int length;

    private Triangulation(PolygonOutline outline) {
        this.outline = outline;
        int n = outline.size();
        before = new int[n];
        after = new int[n];
        Arrays.setAll(before, i -> i == 0 ? n - 1 : i - 1);
        Arrays.setAll(after, i -> i == n - 1 ? 0 : i + 1);
        triangles = new int[3 * (n - 2)];
    }

    /**
     * The triangles of one polygon.
     *
     * @param mesh plane polygons with area whose outlines do not meet themselves, as {@link ObjReader} gives them
     * @param polygon number of the polygon
     * @return vertex numbers of the mesh, three for each triangle, running the same way round as the polygon
     */
    public static int[] of(Mesh mesh, int polygon) {
        PolygonOutline outline = new PolygonOutline(mesh, polygon);
        Triangulation work = new Triangulation(outline);
        if (outline.isConvex()) {
            work.fan();
        } else {
            work.clipEars();
        }
        int first = mesh.firstCorner()[polygon];
        return Arrays.stream(work.triangles, 0, work.length)
                .map(i -> mesh.corners()[first + i])
                .toArray();
    }

    private void fan() {
        for (int i = 1; i + 1 < outline.size(); i++) {
            add(0, i, i + 1);
        }
    }

    private void clipEars() {
        int left = outline.size();
        int corner = 0;
        while (left > 3) {
            int ear = findEar(corner, left);
            add(before[ear], ear, after[ear]);
            after[before[ear]] = after[ear];
            before[after[ear]] = before[ear];
            corner = after[ear];
            left--;
        }
        add(before[corner], corner, after[corner]);
    }

    /** An ear among the corners left; only rounding in an outline that all but meets itself leads to the second resort. */
    private int findEar(int start, int left) {
        int corner = start;
        int widest = start;
        for (int i = 0; i < left; i++) {
            if (isEar(corner)) {
                return corner;
            }
            widest = turnAt(corner) > turnAt(widest) ? corner : widest;
            corner = after[corner];
        }
        return widest;
    }

    private double turnAt(int corner) {
        return outline.turn(before[corner], corner, after[corner]);
    }

    private boolean isEar(int corner) {
        int a = before[corner];
        int c = after[corner];
        double turn = turnAt(corner);
        if (!(turn > 0)) {
            return turn == 0;
        }
        for (int p = after[c]; p != a; p = after[p]) {
            if (outline.turn(a, corner, p) >= 0 && outline.turn(corner, c, p) >= 0 && outline.turn(c, a, p) >= 0) {
                return false;
            }
        }
        return true;
    }

    private void add(int a, int b, int c) {
        if (outline.turn(a, b, c) > 0) {
            triangles[length] = a;
            triangles[length + 1] = b;
            triangles[length + 2] = c;
            length += 3;
        }
    }
}
