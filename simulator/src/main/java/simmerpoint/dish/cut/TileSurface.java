package simmerpoint.dish.cut;

import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;

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
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        disc.fill(u, v, n, out);
        double perFocal = 1 / (2 * plan.focalLengthMetres());
        double planArea = outlineArea();
        double half = lattice.tile / 2;
        for (int i = 0; i < n; i++) {
            double x = out.x[i];
            double y = out.y[i];
            int row = lattice.rowAt(x, y);
            int column = lattice.columnAt(x, row);
            double cx = lattice.centreX(column, row);
            double cy = lattice.centreY(row);
            double gx = cx * perFocal;
            double gy = cy * perFocal;
            double nz = 1 / Math.sqrt(1 + gx * gx + gy * gy);
            double nx = -gx * nz;
            double ny = -gy * nz;
            double dx = x - cx;
            double dy = y - cy;
            double dz = gx * dx + gy * dy;
            double share = (nx * dx + ny * dy) / (1 + nz);
            double a = dx - nx * share - nx * dz;
            double b = dy - ny * share - ny * dz;
            out.z[i] = 0.5 * (gx * cx + gy * cy) + dz;
            out.nx[i] = nx;
            out.ny[i] = ny;
            out.nz[i] = nz;
            out.area[i] = planArea / nz;
            int tile = lattice.tileIn(column, row);
            out.panel[i] = tile >= 0 && lattice.shape.inside(a, b, half) ? tile : ~lattice.standIn(column, row);
        }
    }
}
