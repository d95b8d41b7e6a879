package simmerpoint.dish.cut;

import simmerpoint.dish.AlteredSurface;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;

/** The surface of {@link MeasuredRibs}: the places of another surface, lifted and leaned by what the ribs are off. */
final class MeasuredRibSurface extends AlteredSurface {
    private final RibDeviations deviations;
    private final double hub;
    private final double steepest;

    /** Of panels outside the hub's radius, m. */
    MeasuredRibSurface(RibDeviations deviations, double hub, MirrorSurface panels) {
        super(panels);
        this.deviations = deviations;
        this.hub = hub;
        steepest = panels.steepestSlope() + deviations.steepest();
    }

    @Override
    public double steepestSlope() {
        return steepest;
    }

    @Override
    public double heightAt(double x, double y) {
        return original.heightAt(x, y) + deviations.at(x, y).height();
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        original.fill(u, v, n, out);
        for (int i = 0; i < n; i++) {
            if (out.panel[i] < 0 && Math.hypot(out.x[i], out.y[i]) < hub) {
                continue;
            }
            RibDeviations.Deviation off = deviations.at(out.x[i], out.y[i]);
            double slopeX = -out.nx[i] / out.nz[i] + off.slopeX();
            double slopeY = -out.ny[i] / out.nz[i] + off.slopeY();
            double nz = 1 / Math.sqrt(1 + slopeX * slopeX + slopeY * slopeY);
            out.z[i] += off.height();
            out.nx[i] = -slopeX * nz;
            out.ny[i] = -slopeY * nz;
            out.area[i] *= out.nz[i] / nz;
            out.nz[i] = nz;
        }
    }
}
