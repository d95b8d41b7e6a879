package simmerpoint.dish.cut;

import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.points.MeasuredShape;

/** A mirror as measured, or bent to the nearest paraboloid within the same outline; all of it counts as panel 0. */
final class MeasuredSurface implements MirrorSurface {
    private final MeasuredShape shape;
    private final boolean perfect;
    private final double slope;
    private final double reach;

    MeasuredSurface(MeasuredShape shape, boolean perfect, double focalLength) {
        this.shape = shape;
        this.perfect = perfect;
        slope = 1 / (2 * focalLength);
        reach = shape.corners().stream()
                .mapToDouble(c -> Math.hypot(c.x(), c.y()))
                .max()
                .orElse(0);
    }

    @Override
    public double outlineArea() {
        return shape.outlineArea();
    }

    @Override
    public double apertureArea() {
        return shape.mirrorArea();
    }

    @Override
    public int panels() {
        return 1;
    }

    @Override
    public double steepestSlope() {
        return perfect ? Math.atan(slope * reach) : shape.steepestSlope();
    }

    @Override
    public double radius() {
        return reach;
    }

    @Override
    public double heightAt(double x, double y) {
        double[] found = new double[3];
        boolean mirror = shape.contains(x, y) && at(x, y, found);
        return mirror ? found[0] : Double.NEGATIVE_INFINITY;
    }

    private boolean at(double x, double y, double[] out) {
        boolean mirror = shape.at(x, y, out);
        if (perfect) {
            out[0] = slope / 2 * (x * x + y * y);
            out[1] = slope * x;
            out[2] = slope * y;
        }
        return mirror;
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        double area = shape.outlineArea();
        double[] found = new double[3];
        for (int i = 0; i < n; i++) {
            shape.place(u[i], v[i], out.x, out.y, i);
            boolean mirror = at(out.x[i], out.y[i], found);
            double p = mirror ? found[1] : 0;
            double q = mirror ? found[2] : 0;
            double nz = 1 / Math.sqrt(1 + p * p + q * q);
            out.z[i] = mirror ? found[0] : slope / 2 * (out.x[i] * out.x[i] + out.y[i] * out.y[i]);
            out.nx[i] = -p * nz;
            out.ny[i] = -q * nz;
            out.nz[i] = nz;
            out.area[i] = area / nz;
            out.panel[i] = mirror ? 0 : MirrorPoints.GAP;
        }
    }
}
