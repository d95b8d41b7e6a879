package simmerpoint.tracing;

import simmerpoint.dish.PanelZones;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;

/**
 * A batch of sunlight on the mirrors, in the target frame, one array per component. Not thread-safe.
 *
 * <p>The mirror's random errors (slope error, beam spread) are a two-dimensional Gaussian tilt of the normal,
 * stored as two orthogonal lines through its centre. At signed radius ρ along line l (0 or 1) the normal n becomes n + ρT,
 * T = {@link #tilts}[l], which is square to n, and ρ follows {@link
 * simmerpoint.sampling.FastSignedRayleigh}. {@link ReflectedDirections} says where the ray then goes.
 *
 * <p>Single precision is good to a tenth of a micrometre and of a microradian and makes loops twice as wide (measured on whole
 * traces: half the time).
 */
public final class LightBatch {
    /** Number of rays. */
    public final int capacity;
    /** Mirror point, m. */
    public final float[] px;
    /** Mirror point. */
    public final float[] py;
    /** Mirror point. */
    public final float[] pz;
    /** Direction to the point on the sun where the ray came from, unit. */
    public final float[] sx;
    /** Direction to the sun. */
    public final float[] sy;
    /** Direction to the sun. */
    public final float[] sz;
    /** Unit normal of the mirror, panel tilt included, random errors not. */
    public final float[] nx;
    /** Normal. */
    public final float[] ny;
    /** Normal. */
    public final float[] nz;
    /** Tilts of the normal per unit of radius along line 0 and line 1. */
    public final Tilts[] tilts;
    /** cos i of the angle of incidence. */
    public final float[] cosine;
    /**
     * Sunlight on the mirror point if this ray were the whole sample (divide by the number of rays), W per W/m² of {@link #beam}, so
     * that all watts are in exact proportion to it; 0 where another panel shades that point.
     */
    public final float[] watts;
    /** Beam, W/m². */
    public final double beam;
    /** A uniform number for sampling the size of an error. */
    public final float[] errorSample;
    /** Panel; below 0 in the hub and in gaps, see {@link simmerpoint.dish.MirrorPoints#panel}. */
    public final int[] panel;
    /** Which zone of the dish each panel belongs to. */
    public final PanelZones zones;
    /** A uniform number independent of all else about the rays, for choosing which to follow of those that carry little light. */
    public float choice;
    /** The zone of all rays; below 0 if they are of several. */
    public int zone;

    /** How the dish was turned for each ray by its shaking; null if it stands still, and in another frame's batch. */
    final DishJitter.Turns turns;

    /**
     * Tilts of all normals along one error line, rad.
     *
     * @param x component
     * @param y component
     * @param z component
     */
    public record Tilts(float[] x, float[] y, float[] z) {
        Tilts(int n) {
            this(new float[n], new float[n], new float[n]);
        }
    }

    /** An empty batch of {@code n} rays from a dish that stands still, under a beam of 1 W/m². */
    public LightBatch(int n) {
        this(n, null, PanelZones.ONE, 1);
    }

    /** An empty batch of {@code n} rays. */
    LightBatch(int n, DishJitter.Turns turns, PanelZones zones, double beam) {
        this.beam = beam;
        this.turns = turns;
        this.zones = zones;
        capacity = n;
        px = new float[n];
        py = new float[n];
        pz = new float[n];
        sx = new float[n];
        sy = new float[n];
        sz = new float[n];
        nx = new float[n];
        ny = new float[n];
        nz = new float[n];
        tilts = new Tilts[] {new Tilts(n), new Tilts(n)};
        cosine = new float[n];
        watts = new float[n];
        errorSample = new float[n];
        panel = new int[n];
    }

    /** A batch for the same rays in another frame: shares the arrays that do not depend on the frame. */
    private LightBatch(LightBatch same) {
        turns = null;
        zones = same.zones;
        beam = same.beam;
        capacity = same.capacity;
        px = new float[capacity];
        py = new float[capacity];
        pz = new float[capacity];
        sx = new float[capacity];
        sy = new float[capacity];
        sz = new float[capacity];
        nx = new float[capacity];
        ny = new float[capacity];
        nz = new float[capacity];
        tilts = new Tilts[] {new Tilts(capacity), new Tilts(capacity)};
        cosine = same.cosine;
        watts = same.watts;
        errorSample = same.errorSample;
        panel = same.panel;
    }

    /** Copies mirror points, directions to the sun, normals and cosines of the first {@code n} rays listed from another batch. */
    public void copyListed(LightBatch from, int[] list, int n) {
        copyListed(from.px, list, n, px);
        copyListed(from.py, list, n, py);
        copyListed(from.pz, list, n, pz);
        copyListed(from.sx, list, n, sx);
        copyListed(from.sy, list, n, sy);
        copyListed(from.sz, list, n, sz);
        copyListed(from.nx, list, n, nx);
        copyListed(from.ny, list, n, ny);
        copyListed(from.nz, list, n, nz);
        copyListed(from.cosine, list, n, cosine);
        copyListed(from.errorSample, list, n, errorSample);
    }

    /** out[k] = from[list[k]]. */
    public static void copyListed(float[] from, int[] list, int n, float[] out) {
        for (int k = 0; k < n; k++) {
            out[k] = from[list[k]];
        }
    }

    /**
     * The same rays in another frame. One transform serves one batch object; its result is valid until the batch is filled
     * again.
     */
    public final class FrameTransform {
        private final LightBatch transformed = new LightBatch(LightBatch.this);

        /**
         * The rays in another frame.
         *
         * @param pose of this batch's frame in the other one
         */
        public LightBatch apply(Pose pose) {
            double[] m = pose.rotation().rows();
            LightBatch t = transformed;
            t.zone = zone;
            t.choice = choice;
            transform(capacity, m, pose.origin(), px, py, pz, t.px, t.py, t.pz);
            transform(capacity, m, Vec.ZERO, sx, sy, sz, t.sx, t.sy, t.sz);
            transform(capacity, m, Vec.ZERO, nx, ny, nz, t.nx, t.ny, t.nz);
            for (int line = 0; line < tilts.length; line++) {
                Tilts from = tilts[line];
                Tilts to = t.tilts[line];
                transform(capacity, m, Vec.ZERO, from.x, from.y, from.z, to.x, to.y, to.z);
            }
            return t;
        }
    }

    /** Rotates {@code n} vectors by the matrix with rows {@code m} and adds {@code o}. */
    static void transform(
            int n, double[] m, Vec o, float[] x, float[] y, float[] z, float[] tx, float[] ty, float[] tz) {
        ArrayKernels.row(tx, n, m, 0, x, y, z, o.x());
        ArrayKernels.row(ty, n, m, 1, x, y, z, o.y());
        ArrayKernels.row(tz, n, m, 2, x, y, z, o.z());
    }
}
