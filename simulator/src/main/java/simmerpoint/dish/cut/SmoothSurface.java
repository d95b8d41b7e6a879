package simmerpoint.dish.cut;

import simmerpoint.dish.Aperture;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.sampling.FastSinCos;

/** The uncut paraboloid z = r²/4f within the plan's aperture but for the hub; the whole of it counts as panel 0. */
final class SmoothSurface implements MirrorSurface {
    private final DishPlan plan;
    private final Aperture aperture;

    SmoothSurface(DishPlan plan) {
        this.plan = plan;
        aperture = plan.aperture();
    }

    @Override
    public double outlineArea() {
        return Math.PI * aperture.radius() * aperture.radius();
    }

    @Override
    public double apertureArea() {
        double hub = plan.hubMetres() / 2;
        return outlineArea() - Math.PI * hub * hub;
    }

    @Override
    public int panels() {
        return 1;
    }

    @Override
    public double steepestSlope() {
        return Math.atan(plan.parabola().slope(aperture.reach()));
    }

    @Override
    public double radius() {
        return aperture.reach();
    }

    @Override
    public double heightAt(double x, double y) {
        return aperture.contains(x, y) ? plan.onMirror(x, y).z() : Double.NEGATIVE_INFINITY;
    }

    @Override
    public int panelAt(double x, double y) {
        boolean hub = x * x + y * y < plan.hubMetres() * plan.hubMetres() / 4;
        return aperture.contains(x, y) && !hub ? 0 : MirrorPoints.GAP;
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        double rim = aperture.radius();
        double midX = aperture.x();
        double midY = aperture.y();
        double mid2 = midX * midX + midY * midY;
        double hub2 = plan.hubMetres() * plan.hubMetres() / 4;
        double perFocal = 1 / (2 * plan.focalLengthMetres());
        double planArea = outlineArea();
        FastSinCos.fill(u, 1, n, out.x, out.y);
        for (int i = 0; i < n; i++) {
            double r = rim * Math.sqrt(v[i]);
            double x = r * out.x[i];
            double y = r * out.y[i];
            double off2 = r * r + (2 * (x * midX + y * midY) + mid2);
            x += midX;
            y += midY;
            boolean hub = off2 < hub2;
            double slope = hub ? 0 : perFocal;
            double nz = 1 / Math.sqrt(1 + slope * slope * off2);
            out.x[i] = x;
            out.y[i] = y;
            out.z[i] = 0.5 * perFocal * Math.max(off2, hub2);
            out.nx[i] = -slope * x * nz;
            out.ny[i] = -slope * y * nz;
            out.nz[i] = nz;
            out.area[i] = planArea / nz;
            out.panel[i] = hub ? ~0 : 0;
        }
    }
}
