package simmerpoint.dish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import simmerpoint.geometry.Vec;

/** Places drawn from a surface, for tests. */
public final class SurfaceSamples {
    private SurfaceSamples() {}

    /** Places from pairs of a literal seed. */
    public static MirrorPoints places(MirrorSurface surface, int n, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] u = random.doubles(n).sorted().toArray();
        double[] v = random.doubles(n).toArray();
        MirrorPoints points = new MirrorPoints(n);
        surface.fill(u, v, n, points);
        return points;
    }

    public static Vec place(MirrorPoints p, int i) {
        return new Vec(p.x[i], p.y[i], p.z[i]);
    }

    public static Vec normal(MirrorPoints p, int i) {
        return new Vec(p.nx[i], p.ny[i], p.nz[i]);
    }

    /** Area of the mirrors by counting, within 4 standard errors (1 in 16,000). */
    public static void apertureByCounting(MirrorSurface surface, long seed) {
        int n = 100_000;
        MirrorPoints p = places(surface, n, seed);
        double hits = 0;
        for (int i = 0; i < n; i++) {
            hits += p.panel[i] >= 0 ? 1 : 0;
        }
        double share = hits / n;
        double error = surface.outlineArea() * Math.sqrt(share * (1 - share) / n);
        assertEquals(surface.apertureArea(), surface.outlineArea() * share, 4 * error + 1e-12);
    }
}
