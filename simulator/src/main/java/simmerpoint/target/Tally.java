package simmerpoint.target;

/**
 * What one replicate counted: plain sums over its rays, to be divided by their number. Watts of light before the mirror
 * for outline, gap, incident, shaded, lit; of reflected light for the rest.
 */
final class Tally {
    final TargetGrids grids;
    private final boolean maps;
    long rays;
    double gap;
    double incident;
    double shaded;
    double lit;
    double missed;
    double underside;
    double wall;
    double lid;
    /** Moments of the light on the underside or disc: Σw·x, Σw·y, Σw·x², Σw·xy, Σw·y². */
    final double[] moments = new double[5];

    /** Σ watts × cosine of incidence on underside, wall and lid. */
    double undersideSlant;

    double wallSlant;
    double lidSlant;

    /** Null where no maps are wanted, as the maps are then empty. */
    final RadialHistogram crossing;

    /**
     * Cells of the plane: first all of them with what lands on underside or disc, then all of them again with what passes
     * beside it, then a spare one for what is in neither. One array, so that no branch has to choose.
     */
    final double[] planeMap;

    final double[] wallMap;
    final double[] lidMap;

    Tally(TargetGrids grids) {
        this.grids = grids;
        maps = grids.plane() != null;
        crossing = maps ? new RadialHistogram(grids.radius()) : null;
        planeMap = new double[maps ? 2 * grids.plane().cells() + 1 : 0];
        wallMap = new double[grids.wall() == null ? 0 : grids.wall().cells()];
        lidMap = new double[grids.lid() == null ? 0 : grids.lid().cells()];
    }

    double caught() {
        return underside + wall + lid;
    }

    /** Light that reaches the plane of underside or disc from the dish's side. */
    void cross(double x, double y, double radius, boolean inside, double watts) {
        if (inside) {
            underside += watts;
            moments[0] += watts * x;
            moments[1] += watts * y;
            moments[2] += watts * x * x;
            moments[3] += watts * x * y;
            moments[4] += watts * y * y;
        }
        map(x, y, radius, inside, watts);
    }

    /** Light that reaches the plane of underside or disc from the dish's side, into the maps alone, if there are any. */
    void map(double x, double y, double radius, boolean inside, double watts) {
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
     * The same for {@code n} rays at a stroke; there must be maps.
     *
     * @param beside all bits set for what lands beside the target, else none
     * @param watts of each ray, 0 where it does not cross
     * @param share of them that counts
     */
    void map(float[] x, float[] y, float[] radius, int[] beside, float[] watts, double share, int n) {
        Grid plane = grids.plane();
        int cells = plane.cells();
        for (int i = 0; i < n; i++) {
            int cell = plane.cellOrBeyond(x[i], y[i]) + (cells & beside[i]);
            planeMap[Math.min(2 * cells, cell)] += watts[i] * share;
        }
        crossing.add(radius, watts, share, n);
    }

    boolean hasMaps() {
        return maps;
    }

    /**
     * Light that meets wall, lid or nothing of {@code body}; the underside is counted as it crosses its plane.
     *
     * @param met what the body said
     * @param perLength 1 ÷ length of (dx, dy, dz)
     */
    void hit(Cylinder body, int met, double dx, double dy, double dz, double perLength, double watts) {
        if (met == Cylinder.NOTHING) {
            missed += watts;
        } else if (met == Cylinder.WALL) {
            double inward = -(body.x * dx + body.y * dy) / grids.radius() * perLength;
            hitWall(body.x, body.y, body.z, inward, watts);
        } else if (met == Cylinder.LID) {
            hitLid(body.x, body.y, -dz * perLength, watts);
        }
    }

    /** Light on the wall at (x, y, z), at the given cosine of incidence. */
    void hitWall(double x, double y, double z, double cosine, double watts) {
        wall += watts;
        wallSlant += watts * cosine;
        Grid grid = grids.wall();
        double angle = Math.atan2(y, x);
        double along = (angle < 0 ? angle + 2 * Math.PI : angle) * grids.radius();
        int i = Math.min(grid.columns() - 1, (int) (along / grid.cellWidth()));
        int j = Math.max(0, Math.min(grid.rows() - 1, (int) (z / grid.cellHeight())));
        wallMap[j * grid.columns() + i] += watts;
    }

    /** Light on the lid at (x, y), at the given cosine of incidence. */
    void hitLid(double x, double y, double cosine, double watts) {
        lid += watts;
        lidSlant += watts * cosine;
        if (!maps) {
            return;
        }
        int cell = grids.lid().cellAt(x, y);
        if (cell >= 0) {
            lidMap[cell] += watts;
        }
    }
}
