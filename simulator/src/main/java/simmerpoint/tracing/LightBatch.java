package simmerpoint.tracing;

import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;

/**
 * A batch of sunlight on the mirrors, in the target frame, one array per component; owned by one thread.
 *
 * <p>The mirror's random errors (slope error, beam spread, jitter) are a two-dimensional Gaussian tilt of the normal,
 * kept as two lines through its middle, square to each other. At signed radius ρ along line l (0 or 1) the tilt is
 * τ = ρ·(tiltIn, tiltAcross)[l·capacity + i], in the plane of incidence and across it, and ρ follows {@link
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
    /** Room for rays; also the distance between the two lines in {@link #tiltIn} and {@link #tiltAcross}. */
    public final int capacity;
    /** Mirror point, m. */
    public final double[] px;
    /** Mirror point. */
    public final double[] py;
    /** Mirror point. */
    public final double[] pz;
    /** Direction to the place on the sun the ray came from, unit. */
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
    public final double[] perSine;
    /**
     * Watts of sunlight on the mirror point if this ray were the whole sample (divide by the number of rays); 0 where
     * another panel hides that point from the sun.
     */
    public final double[] watts;
    /** A uniform number for drawing an error. */
    public final double[] draw;
    /** Panel; below 0 in the hub and in gaps, see {@link simmerpoint.dish.MirrorPoints#panel}. */
    public final int[] panel;
    /** Tilt in the plane of incidence per unit of radius, rad; two lines. */
    public final double[] tiltIn;
    /** Tilt across it per unit of radius, rad; two lines. */
    public final double[] tiltAcross;

    /** Room for {@code n} rays. */
    public LightBatch(int n) {
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
        perSine = new double[n];
        watts = new double[n];
        draw = new double[n];
        panel = new int[n];
        tiltIn = new double[2 * n];
        tiltAcross = new double[2 * n];
    }

    /** Another view of a batch's rays, to be turned into another frame: it shares all that no frame changes. */
    private LightBatch(LightBatch same) {
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
        perSine = same.perSine;
        watts = same.watts;
        draw = same.draw;
        panel = same.panel;
        tiltIn = same.tiltIn;
        tiltAcross = same.tiltAcross;
    }

    /**
     * The same rays seen from other targets. One view serves one batch object, however often that is filled anew, and
     * holds good until it is.
     */
    public final class FrameTransform {
        private final LightBatch seen = new LightBatch(LightBatch.this);

        /**
         * The rays in another frame.
         *
         * @param pose of this batch's frame in the other one
         */
        public LightBatch from(Pose pose) {
            double[] m = pose.rotation().rows();
            turn(capacity, m, pose.origin(), px, py, pz, seen.px, seen.py, seen.pz);
            turn(capacity, m, Vec.ZERO, sx, sy, sz, seen.sx, seen.sy, seen.sz);
            turn(capacity, m, Vec.ZERO, nx, ny, nz, seen.nx, seen.ny, seen.nz);
            turn(capacity, m, Vec.ZERO, cx, cy, cz, seen.cx, seen.cy, seen.cz);
            return seen;
        }
    }

    /** {@code n} vectors of one frame, turned by the matrix with rows {@code m} and moved by {@code o}, into another. */
    static void turn(
            int n, double[] m, Vec o, double[] x, double[] y, double[] z, double[] tx, double[] ty, double[] tz) {
        ArrayKernels.combine(tx, n, m[0], x, m[1], y, m[2], z, o.x());
        ArrayKernels.combine(ty, n, m[3], x, m[4], y, m[5], z, o.y());
        ArrayKernels.combine(tz, n, m[6], x, m[7], y, m[8], z, o.z());
    }
}
