package simmerpoint.tracing;

import simmerpoint.dish.PanelZones;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;

/**
 * A batch of sunlight on the mirrors, in the target frame, one array per component. Not thread-safe.
 *
 * <p>The mirror's random errors (slope error, beam spread) are a two-dimensional Gaussian tilt of the normal,
 * stored as two orthogonal lines through its centre. At signed radius ρ along line l (0 or 1) the tilt is
 * τ = ρ·(tiltInPlane, tiltAcross)[l·capacity + i], in the plane of incidence and across it, and ρ follows {@link
 * simmerpoint.sampling.FastSignedRayleigh}. With n the normal, s the direction to the sun, c = n × s, the ray leaves along
 *
 * <pre>A·n + B·s + C·c   (not of length 1)
 * A = 2cos i + 2τ_in(1 − 2cos²i)/sin i − 2τ_in²·cos i
 * B = −1 + 2τ_in·cos i/sin i + τ_in² − τ_across²
 * C = 2τ_across·cos i/sin i + 2τ_in·τ_across</pre>
 *
 * which is exact reflection at the mirror whose normal is n + τ (derived here: 2(m·s)m − |m|²s for m = n + τ_in(s −
 * n·cos i)/sin i + τ_across·c/sin i).
 */
public final class LightBatch {
    /** Number of rays; also the offset of line 1 in {@link #tiltInPlane} and {@link #tiltAcross}. */
    public final int capacity;
    /** Mirror point, m. */
    public final double[] px;
    /** Mirror point. */
    public final double[] py;
    /** Mirror point. */
    public final double[] pz;
    /** Direction to the point on the sun where the ray came from, unit. */
    public final double[] sx;
    /** Direction to the sun. */
    public final double[] sy;
    /** Direction to the sun. */
    public final double[] sz;
    /** Unit normal of the mirror, panel tilt included, random errors not. */
    public final double[] nx;
    /** Normal. */
    public final double[] ny;
    /** Normal. */
    public final double[] nz;
    /** c = n × s, of length sin i. */
    public final double[] cx;
    /** c. */
    public final double[] cy;
    /** c. */
    public final double[] cz;
    /** cos i of the angle of incidence. */
    public final double[] cosine;
    /** 1/sin i. */
    public final double[] inverseSine;
    /**
     * Watts of sunlight on the mirror point if this ray were the whole sample (divide by the number of rays); 0 where
     * another panel shades that point.
     */
    public final double[] watts;
    /** A uniform number for sampling the size of an error. */
    public final double[] errorSample;
    /** Panel; below 0 in the hub and in gaps, see {@link simmerpoint.dish.MirrorPoints#panel}. */
    public final int[] panel;
    /** Which zone of the dish each panel belongs to. */
    public final PanelZones zones;
    /** Tilt in the plane of incidence per unit of radius, rad; two lines. */
    public final double[] tiltInPlane;
    /** Tilt across it per unit of radius, rad; two lines. */
    public final double[] tiltAcross;

    /** How the dish was turned for each ray by its shaking; null if it stands still, and in another frame's batch. */
    final DishJitter.Turns turns;

    /** An empty batch of {@code n} rays from a dish that stands still. */
    public LightBatch(int n) {
        this(n, null, PanelZones.ONE);
    }

    /** An empty batch of {@code n} rays. */
    LightBatch(int n, DishJitter.Turns turns, PanelZones zones) {
        this.turns = turns;
        this.zones = zones;
        capacity = n;
        px = new double[n];
        py = new double[n];
        pz = new double[n];
        sx = new double[n];
        sy = new double[n];
        sz = new double[n];
        nx = new double[n];
        ny = new double[n];
        nz = new double[n];
        cx = new double[n];
        cy = new double[n];
        cz = new double[n];
        cosine = new double[n];
        inverseSine = new double[n];
        watts = new double[n];
        errorSample = new double[n];
        panel = new int[n];
        tiltInPlane = new double[2 * n];
        tiltAcross = new double[2 * n];
    }

    /** A batch for the same rays in another frame: shares the arrays that do not depend on the frame. */
    private LightBatch(LightBatch same) {
        turns = null;
        zones = same.zones;
        capacity = same.capacity;
        px = new double[capacity];
        py = new double[capacity];
        pz = new double[capacity];
        sx = new double[capacity];
        sy = new double[capacity];
        sz = new double[capacity];
        nx = new double[capacity];
        ny = new double[capacity];
        nz = new double[capacity];
        cx = new double[capacity];
        cy = new double[capacity];
        cz = new double[capacity];
        cosine = same.cosine;
        inverseSine = same.inverseSine;
        watts = same.watts;
        errorSample = same.errorSample;
        panel = same.panel;
        tiltInPlane = same.tiltInPlane;
        tiltAcross = same.tiltAcross;
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
            transform(capacity, m, pose.origin(), px, py, pz, transformed.px, transformed.py, transformed.pz);
            transform(capacity, m, Vec.ZERO, sx, sy, sz, transformed.sx, transformed.sy, transformed.sz);
            transform(capacity, m, Vec.ZERO, nx, ny, nz, transformed.nx, transformed.ny, transformed.nz);
            transform(capacity, m, Vec.ZERO, cx, cy, cz, transformed.cx, transformed.cy, transformed.cz);
            return transformed;
        }
    }

    /** Rotates {@code n} vectors by the matrix with rows {@code m} and adds {@code o}. */
    static void transform(
            int n, double[] m, Vec o, double[] x, double[] y, double[] z, double[] tx, double[] ty, double[] tz) {
        ArrayKernels.combine(tx, n, m[0], x, m[1], y, m[2], z, o.x());
        ArrayKernels.combine(ty, n, m[3], x, m[4], y, m[5], z, o.y());
        ArrayKernels.combine(tz, n, m[6], x, m[7], y, m[8], z, o.z());
    }
}
