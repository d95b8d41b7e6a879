package simmerpoint.dish.cut;

import simmerpoint.dish.AlteredSurface;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.Profile;

/**
 * The places of another surface, in the same order and with the same outlines in plan, put on a curve turned about the axis: on the
 * paraboloid itself where that is a parabola.
 */
final class TurnedSurface extends AlteredSurface {
    private final Profile profile;
    private final double hub;

    /**
     * Of some panels.
     *
     * @param profile the curve
     * @param hub radius of the flat in the middle, 0 for none, m
     * @param panels the other surface
     */
    TurnedSurface(Profile profile, double hub, MirrorSurface panels) {
        super(panels);
        this.profile = profile;
        this.hub = hub;
    }

    @Override
    public double steepestSlope() {
        return Math.atan(profile.slope(radius()));
    }

    @Override
    public double heightAt(double x, double y) {
        double height = original.heightAt(x, y);
        return height == Double.NEGATIVE_INFINITY ? height : profile.height(Math.hypot(x, y));
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        original.fill(u, v, n, out);
        for (int i = 0; i < n; i++) {
            double r = Math.sqrt(out.x[i] * out.x[i] + out.y[i] * out.y[i]);
            double outwards = r < hub || r == 0 ? 0 : profile.slope(r) / r;
            double nz = 1 / Math.sqrt(1 + outwards * outwards * r * r);
            out.z[i] = profile.height(Math.max(r, hub));
            out.nx[i] = -outwards * out.x[i] * nz;
            out.ny[i] = -outwards * out.y[i] * nz;
            out.area[i] *= out.nz[i] / nz;
            out.nz[i] = nz;
        }
    }
}
