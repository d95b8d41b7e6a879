package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Vec;

/**
 * The tiles of a dish. In plan their centres form a square or hexagonal lattice with one centre on the axis, as close
 * as their corners allow when seen from above, plus the gap: the tangent planes of a paraboloid at lattice points meet
 * exactly above the borders of the lattice's cells (derived here: z = (2c·p − c²)/4f for two centres is equal on their
 * perpendicular bisector), so every tile lies in the plane of its own cell. A tile is laid where all of it is within
 * the rim circle and none of it within the hub circle. If tiles are cut at the rim, one is laid as well where a tenth of it or
 * more is within the rim circle and outside the hub in one piece, and cut to that.
 */
final class TileLattice {
    /** Distance of rows of a honeycomb, in widths. */
    static final double ROW = Math.sqrt(0.75);

    private static final int PROBES = 48;

    /** Smaller pieces of a tile are not worth cutting (common practice). */
    private static final double LEAST_SHARE = 0.1;

    final TileShape shape;
    final double tile;
    final double pitch;
    final double focalLength;
    private final double radius;
    private final double hub;
    private final boolean cutAtRim;
    private final HubEdge hubEdge;
    private final int reach;
    private final int[] number;
    private final int count;

    TileLattice(DishPlan plan, Tiles cut) {
        shape = cut.shape();
        tile = cut.tileMetres();
        focalLength = plan.focalLengthMetres();
        radius = plan.radiusMetres();
        hub = plan.hubMetres() / 2;
        cutAtRim = cut.atRim() == Tiles.AtRim.CUT;
        hubEdge = new HubEdge(cutAtRim ? hub : 0);
        pitch = tile * widestInPlan() + plan.gapMetres();
        reach = (int) Math.ceil(radius / (pitch * ROW)) * 2 + 1;
        number = new int[(2 * reach + 1) * (2 * reach + 1)];
        int laid = 0;
        for (int j = -reach; j <= reach; j++) {
            for (int i = -reach; i <= reach; i++) {
                number[index(i, j)] = fits(i, j) ? laid++ : MirrorPoints.GAP;
            }
        }
        count = laid;
    }

    /** Largest width in plan of a tile of width 1 anywhere in the dish. */
    private double widestInPlan() {
        double reached = cutAtRim ? radius + tile / 2 : radius;
        double widest = 1;
        for (int a = 0; a <= PROBES; a++) {
            for (int b = 0; b <= PROBES; b++) {
                double x = reached * a / PROBES;
                double y = reached * b / PROBES;
                if (Math.hypot(x, y) <= reached) {
                    widest = Math.max(widest, shape.widthInPlan(TangentPlane.at(x, y, focalLength)));
                }
            }
        }
        return widest;
    }

    private boolean fits(int i, int j) {
        TangentPlane plane = TangentPlane.at(centreX(i, j), centreY(j), focalLength);
        double[] x = new double[shape.corners()];
        double[] y = new double[shape.corners()];
        corners(plane, x, y);
        boolean clear = hub == 0 || PlanPolygon.distanceFromOrigin(x, y) >= hub;
        return (isWhole(x, y) && clear) || (cutAtRim && isWorthCutting(plane, x, y));
    }

    /** Corners of a whole tile in plan. */
    private void corners(TangentPlane plane, double[] x, double[] y) {
        for (int k = 0; k < x.length; k++) {
            double a = tile * shape.cornerX(k);
            double b = tile * shape.cornerY(k);
            x[k] = plane.cx() + plane.planX(a, b);
            y[k] = plane.cy() + plane.planY(a, b);
        }
    }

    private boolean isWhole(double[] x, double[] y) {
        for (int k = 0; k < x.length; k++) {
            if (Math.hypot(x[k], y[k]) > radius) {
                return false;
            }
        }
        return true;
    }

    private boolean isWorthCutting(TangentPlane plane, double[] x, double[] y) {
        return planArea(plane, x, y) >= LEAST_SHARE * wholeArea(plane)
                && hubEdge.parts(withinRim(x, y)).size() == 1
                && !isPierced(x, y);
    }

    /** Whether all of the hub lies within the tile. */
    private boolean isPierced(double[] x, double[] y) {
        return hub > 0 && PlanPolygon.distanceFromOrigin(x, y) == 0;
    }

    private double wholeArea(TangentPlane plane) {
        return tile * tile * shape.area() * plane.nz();
    }

    /** Area of the tile in that plane seen from above, m². */
    double planArea(TangentPlane plane) {
        double[] x = new double[shape.corners()];
        double[] y = new double[shape.corners()];
        corners(plane, x, y);
        return planArea(plane, x, y);
    }

    private double planArea(TangentPlane plane, double[] x, double[] y) {
        double within = isWhole(x, y) ? wholeArea(plane) : new DiscClip(x, y, radius).area();
        return hubEdge.isNone() ? within : within - hubEdge.taken(withinRim(x, y));
    }

    /** What of a tile lies within the rim. */
    private List<Point> withinRim(double[] x, double[] y) {
        List<Point> corners = new ArrayList<>();
        if (isWhole(x, y)) {
            for (int k = 0; k < x.length; k++) {
                corners.add(new Point(x[k], y[k]));
            }
        } else {
            new DiscClip(x, y, radius).corners().forEach(p -> corners.add(new Point(p[0], p[1])));
        }
        return corners;
    }

    /** Whether a place lies within the hub to which tiles are cut. */
    boolean inHub(double x, double y) {
        return hubEdge.contains(x, y);
    }

    private int index(int i, int j) {
        return (j + reach) * (2 * reach + 1) + i + reach;
    }

    double centreX(int i, int j) {
        return shape == TileShape.SQUARE ? pitch * i : pitch * (i + 0.5 * j);
    }

    double centreY(int j) {
        return shape == TileShape.SQUARE ? pitch * j : pitch * ROW * j;
    }

    /** Row of the cell above which the plan point lies. */
    int rowAt(double x, double y) {
        if (shape == TileShape.SQUARE) {
            return (int) Math.rint(y / pitch);
        }
        double r = y / (pitch * ROW);
        double q = x / pitch - 0.5 * r;
        double row = Math.rint(r);
        double dr = Math.abs(row - r);
        double dq = Math.abs(Math.rint(q) - q);
        double ds = Math.abs(Math.rint(-q - r) + q + r);
        return (int) (dr > dq && dr > ds ? -Math.rint(q) - Math.rint(-q - r) : row);
    }

    /** Column of the cell above which the plan point lies, given its row. */
    int columnAt(double x, int row) {
        return columnOf(x, row);
    }

    /** Centres of the cells above which plan points lie. */
    void centres(double[] x, double[] y, int n, double[] cx, double[] cy) {
        if (shape == TileShape.SQUARE) {
            nearest(x, n, cx);
            nearest(y, n, cy);
            return;
        }
        for (int i = 0; i < n; i++) {
            int row = rowAt(x[i], y[i]);
            cx[i] = centreX(columnAt(x[i], row), row);
            cy[i] = centreY(row);
        }
    }

    private void nearest(double[] at, int n, double[] centre) {
        double width = pitch;
        for (int i = 0; i < n; i++) {
            centre[i] = width * Math.rint(at[i] / width);
        }
    }

    /** Row of the cells with such a centre. */
    int rowOf(double cy) {
        return (int) Math.rint(cy / (shape == TileShape.SQUARE ? pitch : pitch * ROW));
    }

    /** Column of the cell with such a centre. */
    int columnOf(double cx, int row) {
        return (int) Math.rint(shape == TileShape.SQUARE ? cx / pitch : cx / pitch - 0.5 * row);
    }

    /** Number of the tile in a cell, or {@link MirrorPoints#GAP}. */
    int tileIn(int column, int row) {
        if (Math.abs(column) > reach || Math.abs(row) > reach) {
            return MirrorPoints.GAP;
        }
        return number[index(column, row)];
    }

    /** The tile in a cell; for an empty cell a substitute, different ones for different cells. */
    int standIn(int column, int row) {
        int tile = tileIn(column, row);
        return tile >= 0 ? tile : Math.floorMod(column * (2 * reach + 1) + row, count);
    }

    int count() {
        return count;
    }

    /** The edges of all tiles, in the order of their numbers; dish frame, m. */
    List<List<Vec>> edges() {
        List<List<Vec>> all = new ArrayList<>(count);
        forEach(plane -> all.add(edge(plane)));
        return all;
    }

    private List<Vec> edge(TangentPlane plane) {
        double[] x = new double[shape.corners()];
        double[] y = new double[shape.corners()];
        corners(plane, x, y);
        List<Vec> corners = new ArrayList<>();
        List<Point> within = withinRim(x, y);
        boolean atHub = hubEdge.taken(within) > 0;
        if (isWhole(x, y) && !atHub) {
            for (int c = 0; c < shape.corners(); c++) {
                corners.add(new Vec(x[c], y[c], plane.height(tile * shape.cornerX(c), tile * shape.cornerY(c))));
            }
        } else {
            List<Point> left = atHub ? hubEdge.parts(within).get(0).corners() : within;
            left.forEach(p -> corners.add(new Vec(p.x(), p.y(), plane.heightAbove(p.x(), p.y()))));
        }
        return corners;
    }

    /** Calls {@code visitor} with the plane of every tile, in the order of their numbers. */
    void forEach(Consumer<TangentPlane> visitor) {
        for (int j = -reach; j <= reach; j++) {
            for (int i = -reach; i <= reach; i++) {
                if (tileIn(i, j) != MirrorPoints.GAP) {
                    visitor.accept(TangentPlane.at(centreX(i, j), centreY(j), focalLength));
                }
            }
        }
    }
}
