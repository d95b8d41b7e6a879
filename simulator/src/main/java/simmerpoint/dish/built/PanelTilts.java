package simmerpoint.dish.built;

import java.util.Arrays;
import java.util.SplittableRandom;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.PanelZones;

/**
 * Tilts of whole panels: for each panel of one built dish a small rotation, drawn once from the seed. It rotates the
 * panel's normals; the shift of its edges (tilt × half the width, below a millimetre for hand-sized panels) is
 * neglected. Panel k uses the same deviates whatever the standard deviation.
 */
public final class PanelTilts {
    private static final long SALT = 0x5DEECE66DL;

    private final double[] rotation;

    private PanelTilts(double[] rotation) {
        this.rotation = rotation;
    }

    /**
     * Draws the tilts.
     *
     * @param panels how many
     * @param sigma standard deviation per axis, rad; 0 for none
     * @param seed of the built dish
     */
    public static PanelTilts draw(int panels, double sigma, long seed) {
        return draw(panels, PanelZones.ONE, new double[] {sigma}, seed);
    }

    /**
     * Draws the tilts of panels in zones.
     *
     * @param sigmas standard deviation per axis in each zone, rad
     */
    static PanelTilts draw(int panels, PanelZones zones, double[] sigmas, long seed) {
        if (Arrays.stream(sigmas).allMatch(sigma -> sigma == 0)) {
            return new PanelTilts(null);
        }
        SplittableRandom random = new SplittableRandom(seed * SALT);
        double[] rotation = new double[3 * panels];
        for (int i = 0; i < rotation.length; i++) {
            rotation[i] = sigmas[zones.of(i / 3)] * random.nextGaussian();
        }
        return new PanelTilts(rotation);
    }

    /** The same with rotations added panel by panel, rad; none where there are no {@code turns}. */
    PanelTilts and(double[] turns) {
        if (turns.length == 0) {
            return this;
        }
        double[] sum = turns.clone();
        for (int i = 0; i < sum.length && rotation != null; i++) {
            sum[i] += rotation[i];
        }
        return new PanelTilts(sum);
    }

    /** Whether every panel sits as planned. */
    public boolean none() {
        return rotation == null;
    }

    /**
     * Turns the normals of a batch by its panels' rotations: n + ω × n, made unit again. Only the two parts of ω across
     * the normal matter, so the tilt has the given standard deviation about both axes of the panel.
     */
    public void apply(MirrorPoints points, int n) {
        for (int i = 0; i < n; i++) {
            int k = 3 * Math.max(0, points.panel[i]);
            double wx = rotation[k];
            double wy = rotation[k + 1];
            double wz = rotation[k + 2];
            double x = points.nx[i];
            double y = points.ny[i];
            double z = points.nz[i];
            double tx = x + wy * z - wz * y;
            double ty = y + wz * x - wx * z;
            double tz = z + wx * y - wy * x;
            double scale = 1 / Math.sqrt(tx * tx + ty * ty + tz * tz);
            points.nx[i] = tx * scale;
            points.ny[i] = ty * scale;
            points.nz[i] = tz * scale;
        }
    }
}
