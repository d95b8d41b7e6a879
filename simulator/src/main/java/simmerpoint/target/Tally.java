package simmerpoint.target;

import simmerpoint.dish.built.MirrorShares;
import simmerpoint.pan.GrazingAbsorptance;

/**
 * Sums over the rays of one replicate, to be divided by the number of rays. Watts of light before the mirror for gap,
 * incident, shaded, unshaded; of reflected light for the rest.
 */
final class Tally {
    final TargetGrids grids;
    private final boolean maps;
    long rays;
    double gap;
    /** Part of {@link #gap}: on a mask over mirrors. */
    double covered;

    double incident;
    double shaded;
    double unshaded;
    double missed;
    /** Part of {@link #missed}: stopped by what the pan stands on. */
    double stopped;

    double underside;
    double wall;
    double lid;
    /** By zone of the dish. */
    final ZoneTally zones;

    /** Moments of the light on the underside or disc: Σw·x, Σw·y, Σw·x², Σw·xy, Σw·y². */
    final double[] moments = new double[5];

    /** Σ watts × relative absorptance at each ray's angle, see {@link GrazingAbsorptance}. */
    double undersideAbsorbable;

    double lidAbsorbable;
    /** The same for each row of the wall's map. */
    final double[] wallAbsorbableByRow;

    /** Null where no maps are wanted; the maps are then empty. */
    final RadialHistogram crossing;

    /**
     * Cells of the plane three times in one array, so that indexing needs no branch: all cells for light on underside or
     * disc, all cells for light that passes outside it, one spare cell for light beyond the grid.
     */
    final double[] planeMap;

    /** Cell of each ray of a batch. */
    private final int[] cellOf;

    final double[] wallMap;
    final double[] lidMap;

    /** For a dish of one zone. */
    Tally(TargetGrids grids) {
        this(grids, 1);
    }

    /** For a dish of so many zones. */
    Tally(TargetGrids grids, int zones) {
        this.zones = new ZoneTally(zones);
        this.grids = grids;
        maps = grids.plane() != null;
        crossing = maps ? new RadialHistogram(grids.radius()) : null;
        cellOf = new int[maps ? StoredRayCatcher.MAX_BATCH : 0];
        planeMap = new double[maps ? 2 * grids.plane().cells() + 1 : 0];
        wallMap = new double[grids.wall() == null ? 0 : grids.wall().cells()];
        wallAbsorbableByRow = new double[grids.wall() == null ? 0 : grids.wall().rows()];
        lidMap = new double[grids.lid() == null ? 0 : grids.lid().cells()];
    }

    /** Light that leaves the mirrors as a beam. */
    double reflected(MirrorShares shares) {
        if (!zones.isKept()) {
            return unshaded * shares.reflected(0);
        }
        return zones.unshaded(shares::reflected);
    }

    double caught() {
        return underside + wall + lid;
    }

    /** Light on row {@code j} of the wall. */
    double onWall(int j) {
        int columns = grids.wall().columns();
        double sum = 0;
        for (int c = j * columns; c < (j + 1) * columns; c++) {
            sum += wallMap[c];
        }
        return sum;
    }

    /** Adds light that crosses the plane of underside or disc from the dish's side. */
    void addCrossing(double x, double y, double radius, boolean inside, double watts) {
        if (inside) {
            underside += watts;
            moments[0] += watts * x;
            moments[1] += watts * y;
            moments[2] += watts * x * x;
            moments[3] += watts * x * y;
            moments[4] += watts * y * y;
        }
        addToMaps(x, y, radius, inside, watts);
    }

    private void addToMaps(double x, double y, double radius, boolean inside, double watts) {
        if (!maps) {
            return;
        }
        crossing.add(radius, watts);
        int cell = grids.plane().cellAt(x, y);
        if (cell >= 0) {
            planeMap[inside ? cell : cell + grids.plane().cells()] += watts;
        }
    }

    /**
     * Adds {@code n} rays that cross the plane to the maps; only if {@link #hasMaps}.
     *
     * @param caughtWatts of each ray, 0 where it passes outside the target
     * @param crossingWatts of each ray, 0 where it does not cross
     * @param share factor on all watts
     */
    void addToMaps(
            float[] x, float[] y, float[] radius, float[] caughtWatts, float[] crossingWatts, double share, int n) {
        Grid plane = grids.plane();
        int cells = plane.cells();
        plane.cellsOrOutside(x, y, n, cellOf);
        for (int i = 0; i < n; i++) {
            int passes = RayIntersections.negativeMask(caughtWatts[i] - crossingWatts[i]);
            planeMap[Math.min(2 * cells, cellOf[i] + (cells & passes))] += crossingWatts[i] * share;
        }
        crossing.add(radius, crossingWatts, share, n);
    }

    boolean hasMaps() {
        return maps;
    }

    /** Adds light that what the pan stands on keeps off. */
    void addStopped(double watts) {
        missed += watts;
        stopped += watts;
    }

    /**
     * Adds light to wall, lid or missed; light on the underside is added by {@link #addCrossing}.
     *
     * @param face result of {@link Cylinder#intersect}
     * @param inverseLength 1 ÷ length of (dx, dy, dz)
     */
    void addBodyHit(Cylinder body, int face, double dx, double dy, double dz, double inverseLength, double watts) {
        if (face == Cylinder.NOTHING) {
            missed += watts;
        } else if (face == Cylinder.WALL) {
            double inward = -(body.x * dx + body.y * dy) / grids.radius() * inverseLength;
            addWallHit(body.x, body.y, body.z, inward, watts);
        } else if (face == Cylinder.LID) {
            addLidHit(body.x, body.y, -dz * inverseLength, watts);
        }
    }

    void addWallHit(double x, double y, double z, double cosine, double watts) {
        wall += watts;
        Grid grid = grids.wall();
        int j = Math.max(0, Math.min(grid.rows() - 1, (int) (z / grid.cellHeight())));
        wallMap[j * grid.columns() + (maps ? column(grid, x, y) : 0)] += watts;
        wallAbsorbableByRow[j] += watts * absorptance(cosine);
    }

    private static int column(Grid wall, double x, double y) {
        double turns = Math.atan2(y, x) / (2 * Math.PI);
        return Math.min(wall.columns() - 1, (int) ((turns < 0 ? turns + 1 : turns) * wall.columns()));
    }

    /** Rounding may carry a cosine outside 0 to 1. */
    private static double absorptance(double cosine) {
        return GrazingAbsorptance.relativeAbsorptance(Math.max(0, Math.min(1, cosine)));
    }

    private void addLidHit(double x, double y, double cosine, double watts) {
        lid += watts;
        lidAbsorbable += watts * absorptance(cosine);
        if (!maps) {
            return;
        }
        int cell = grids.lid().cellAt(x, y);
        if (cell >= 0) {
            lidMap[cell] += watts;
        }
    }
}
