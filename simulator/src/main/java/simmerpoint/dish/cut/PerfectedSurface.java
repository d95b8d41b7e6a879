package simmerpoint.dish.cut;

import simmerpoint.dish.AlteredSurface;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;

/**
 * The surface of {@link Perfected}: the places of another surface, in the same order and with the same outlines in
 * plan, put on the paraboloid itself (z = r²/4f) and covered with mirror where there was none. A filled place tilts with
 * the panel that would cover it.
 */
final class PerfectedSurface extends AlteredSurface {
    private final DishPlan plan;
    private final boolean curved;
    private final boolean filled;

    /** Of the panels laid out as {@code panels}. */
    PerfectedSurface(DishPlan plan, Perfected cut, MirrorSurface panels) {
        super(panels);
        this.plan = plan;
        curved = cut.curved() || !cut.has(CutTrait.PANELS);
        filled = cut.filled();
    }

    @Override
    public double apertureArea() {
        return filled ? original.outlineArea() : original.apertureArea();
    }

    @Override
    public double steepestSlope() {
        return curved ? Math.atan(plan.parabola().slope(plan.radiusMetres())) : original.steepestSlope();
    }

    @Override
    public double heightAt(double x, double y) {
        return curved ? (x * x + y * y) / (4 * plan.focalLengthMetres()) : original.heightAt(x, y);
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        original.fill(u, v, n, out);
        if (curved) {
            bend(n, out);
        }
        if (filled) {
            for (int i = 0; i < n; i++) {
                out.panel[i] = out.panel[i] < 0 ? ~out.panel[i] : out.panel[i];
            }
        }
    }

    private void bend(int n, MirrorPoints out) {
        double perFocal = 1 / (2 * plan.focalLengthMetres());
        for (int i = 0; i < n; i++) {
            double r2 = out.x[i] * out.x[i] + out.y[i] * out.y[i];
            double nz = 1 / Math.sqrt(1 + perFocal * perFocal * r2);
            out.z[i] = 0.5 * perFocal * r2;
            out.nx[i] = -perFocal * out.x[i] * nz;
            out.ny[i] = -perFocal * out.y[i] * nz;
            out.area[i] *= out.nz[i] / nz;
            out.nz[i] = nz;
        }
    }
}
