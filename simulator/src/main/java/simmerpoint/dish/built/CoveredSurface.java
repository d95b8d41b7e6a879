package simmerpoint.dish.built;

import java.util.Optional;
import simmerpoint.dish.AlteredSurface;
import simmerpoint.dish.Aperture;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.geometry.TriangleTree;

/**
 * A surface with a mask over part of it: what is covered takes light and sends none. It stands in the way of no other light, since it lies
 * on the mirror.
 */
final class CoveredSurface extends AlteredSurface {
    /** Places by which the aperture is counted; of a lattice this fine the count is good to some 1e-4. */
    private static final int PLACES = 1 << 16;

    private static final int BATCH = 1 << 12;

    /** The golden ratio less 1: its multiples lie as evenly on a circle as any. */
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final Mask mask;
    private final Aperture rim;

    CoveredSurface(MirrorSurface bare, Mask mask, Aperture rim) {
        super(bare);
        this.mask = mask;
        this.rim = rim;
    }

    /** The mirrors' area times the share of places on a lattice (Fibonacci's) that stay open. */
    @Override
    public double apertureArea() {
        MirrorPoints points = new MirrorPoints(BATCH);
        double[] u = new double[BATCH];
        double[] v = new double[BATCH];
        long open = 0;
        long mirrors = 0;
        for (int from = 0; from < PLACES; from += BATCH) {
            for (int i = 0; i < BATCH; i++) {
                u[i] = (from + i + 0.5) / PLACES;
                v[i] = (from + i) * GOLDEN % 1;
            }
            fill(u, v, BATCH, points);
            for (int i = 0; i < BATCH; i++) {
                open += points.panel[i] >= 0 ? 1 : 0;
                mirrors += points.panel[i] >= 0 || points.panel[i] == MirrorPoints.COVERED ? 1 : 0;
            }
        }
        return mirrors == 0 ? 0 : original.apertureArea() * open / mirrors;
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        original.fill(u, v, n, out);
        for (int i = 0; i < n; i++) {
            if (out.panel[i] >= 0 && mask.covers(out.x[i], out.y[i], rim)) {
                out.panel[i] = MirrorPoints.COVERED;
            }
        }
    }

    @Override
    public Optional<TriangleTree> blockingPanels() {
        return original.blockingPanels();
    }
}
