package simmerpoint.dish.cut;

import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.sampling.FastSinCos;

/**
 * Small flat tiles on a lattice; see {@link TileLattice}. What is left of a cell beside its tile counts as gap and lies in
 * the tile's plane; the outline is the rim circle.
 */
final class TileSurface implements MirrorSurface {
    private final DishPlan plan;
    private final Tiles cut;
    private final TileLattice lattice;
    private final SmoothSurface disc;
    private static volatile TileSurface last;

    private double aperture;
    private double steepest;

    /** Tiles laid out for a plan; the last is kept, since many cookers of one dish are traced and a dish may have thousands. */
    static TileSurface of(DishPlan plan, Tiles cut) {
        TileSurface kept = last;
        if (kept == null || !kept.plan.equals(plan) || !kept.cut.equals(cut)) {
            kept = new TileSurface(plan, cut);
            last = kept;
        }
        return kept;
    }

    private TileSurface(DishPlan plan, Tiles cut) {
        this.plan = plan;
        this.cut = cut;
        lattice = new TileLattice(plan, cut);
        disc = new SmoothSurface(new DishPlan(plan.diameterMetres(), plan.focalLengthMetres(), 0, 0, new Smooth()));
        lattice.forEach(plane -> {
            aperture += lattice.planArea(plane);
            steepest = Math.max(steepest, Math.acos(Math.min(1, plane.nz())));
        });
        if (lattice.count() == 0) {
            throw new IllegalArgumentException("no tile of " + cut.tileMetres() + " m fits between hub and rim");
        }
    }

    @Override
    public double outlineArea() {
        return disc.outlineArea();
    }

    @Override
    public double apertureArea() {
        return aperture;
    }

    @Override
    public int panels() {
        return lattice.count();
    }

    @Override
    public double steepestSlope() {
        return steepest;
    }

    @Override
    public double radius() {
        return plan.radiusMetres();
    }

    @Override
    public double heightAt(double x, double y) {
        int row = lattice.rowAt(x, y);
        double cx = lattice.centreX(lattice.columnAt(x, row), row);
        double cy = lattice.centreY(row);
        return (2 * (cx * x + cy * y) - cx * cx - cy * cy) / (4 * plan.focalLengthMetres());
    }

    @Override
    public int panelAt(double x, double y) {
        if (x * x + y * y > plan.radiusMetres() * plan.radiusMetres()) {
            return MirrorPoints.GAP;
        }
        int row = lattice.rowAt(x, y);
        int column = lattice.columnAt(x, row);
        int tile = lattice.tileIn(column, row);
        if (tile < 0 || lattice.inHub(x, y)) {
            return MirrorPoints.GAP;
        }
        double perFocal = 1 / (2 * plan.focalLengthMetres());
        double gx = perFocal * lattice.centreX(column, row);
        double gy = perFocal * lattice.centreY(row);
        double dx = x - lattice.centreX(column, row);
        double dy = y - lattice.centreY(row);
        double up = (gx * dx + gy * dy) / (1 + Math.sqrt(1 + gx * gx + gy * gy));
        return lattice.shape.inside(dx + gx * up, dy + gy * up, lattice.tile / 2) ? tile : MirrorPoints.GAP;
    }

    /**
     * Loops that each write one array, so that they are vectorised. A place in the tile's own plane is the place in plan plus the gradient
     * times its height above the tile's centre ÷ (1 + 1/n), n the upward part of the normal: the plane turned down about its level line
     * (derived here).
     */
    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        double perFocal = 1 / (2 * plan.focalLengthMetres());
        double[] cx = out.nx;
        double[] cy = out.ny;
        double[] nz = out.nz;
        places(u, v, n, out);
        lattice.centres(out.x, out.y, n, cx, cy);
        double perFocal2 = perFocal * perFocal;
        for (int i = 0; i < n; i++) {
            nz[i] = 1 / Math.sqrt(1 + perFocal2 * (cx[i] * cx[i] + cy[i] * cy[i]));
        }
        for (int i = 0; i < n; i++) {
            out.z[i] = perFocal * (cx[i] * (out.x[i] - 0.5 * cx[i]) + cy[i] * (out.y[i] - 0.5 * cy[i]));
        }
        findTiles(n, perFocal, out);
        double planArea = outlineArea();
        for (int i = 0; i < n; i++) {
            out.area[i] = planArea / nz[i];
        }
        for (int i = 0; i < n; i++) {
            cx[i] *= -perFocal * nz[i];
        }
        for (int i = 0; i < n; i++) {
            cy[i] *= -perFocal * nz[i];
        }
    }

    private void places(double[] u, double[] v, int n, MirrorPoints out) {
        double rim = plan.radiusMetres();
        double[] radius = out.area;
        FastSinCos.fill(u, 1, n, out.x, out.y);
        for (int i = 0; i < n; i++) {
            radius[i] = rim * Math.sqrt(v[i]);
        }
        for (int i = 0; i < n; i++) {
            out.x[i] *= radius[i];
        }
        for (int i = 0; i < n; i++) {
            out.y[i] *= radius[i];
        }
    }

    /** Fills the panels; the first two parts of the normals still hold the centres of the tiles. */
    private void findTiles(int n, double perFocal, MirrorPoints out) {
        double half = lattice.tile / 2;
        for (int i = 0; i < n; i++) {
            double cx = out.nx[i];
            double cy = out.ny[i];
            double dx = out.x[i] - cx;
            double dy = out.y[i] - cy;
            double up = perFocal * perFocal * (cx * dx + cy * dy) * out.nz[i] / (1 + out.nz[i]);
            int row = lattice.rowOf(cy);
            int column = lattice.columnOf(cx, row);
            int tile = lattice.tileIn(column, row);
            boolean there = tile >= 0
                    && lattice.shape.inside(dx + cx * up, dy + cy * up, half)
                    && !lattice.inHub(out.x[i], out.y[i]);
            out.panel[i] = there ? tile : ~lattice.standIn(column, row);
        }
    }
}
