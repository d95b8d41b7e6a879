package simmerpoint.dish.shape;

import simmerpoint.dish.AlteredSurface;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;

/** The places of another surface, lifted and leaned by a deformation. */
public final class DeformedSurface extends AlteredSurface {
    private final Deformation deformation;
    private final double hub;

    /**
     * Of some panels.
     *
     * @param deformation what is done to them
     * @param hub radius of the hole in the middle, which stays as it is, m
     * @param panels the other surface
     */
    public DeformedSurface(Deformation deformation, double hub, MirrorSurface panels) {
        super(panels);
        this.deformation = deformation;
        this.hub = hub;
    }

    /** A bound, found when it is asked for: few need it. */
    @Override
    public double steepestSlope() {
        return original.steepestSlope() + deformation.steepest(hub, radius());
    }

    @Override
    public double heightAt(double x, double y) {
        return original.heightAt(x, y) + deformation.at(x, y).height();
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        original.fill(u, v, n, out);
        Displacement off = new Displacement();
        for (int i = 0; i < n; i++) {
            if (out.panel[i] < 0 && Math.hypot(out.x[i], out.y[i]) < hub) {
                continue;
            }
            off.clear();
            deformation.add(out.x[i], out.y[i], off);
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
