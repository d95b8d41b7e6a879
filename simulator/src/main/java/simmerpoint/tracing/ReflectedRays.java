package simmerpoint.tracing;

import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;

/**
 * A batch of rays after their reflection, one drawn error each, kept to be caught again and again by targets that stand
 * differently. Only rays that met a mirror are kept, in single precision: good to a tenth of a micrometre and of a
 * microradian, and half as much memory to walk through, which is what re-catching waits for.
 */
public final class ReflectedRays {
    private final int count;
    private final float[] px;
    private final float[] py;
    private final float[] pz;
    private final float[] dx;
    private final float[] dy;
    private final float[] dz;
    private final float[] sx;
    private final float[] sy;
    private final float[] sz;
    private final float[] watts;
    private final int[] panel;

    private ReflectedRays(int n) {
        count = n;
        px = new float[n];
        py = new float[n];
        pz = new float[n];
        dx = new float[n];
        dy = new float[n];
        dz = new float[n];
        sx = new float[n];
        sy = new float[n];
        sz = new float[n];
        watts = new float[n];
        panel = new int[n];
    }

    /** The rays of {@code light} that met a mirror, leaving as {@code out} says. */
    public static ReflectedRays of(LightBatch light, Outgoing out) {
        int n = 0;
        for (int panel : light.panel) {
            n += panel >= 0 ? 1 : 0;
        }
        ReflectedRays kept = new ReflectedRays(n);
        int k = 0;
        for (int i = 0; i < light.capacity; i++) {
            if (light.panel[i] >= 0) {
                kept.keep(k++, light, out, i);
            }
        }
        return kept;
    }

    private void keep(int k, LightBatch light, Outgoing out, int i) {
        px[k] = (float) light.px[i];
        py[k] = (float) light.py[i];
        pz[k] = (float) light.pz[i];
        double perLength = 1 / Math.sqrt(out.dx[i] * out.dx[i] + out.dy[i] * out.dy[i] + out.dz[i] * out.dz[i]);
        dx[k] = (float) (out.dx[i] * perLength);
        dy[k] = (float) (out.dy[i] * perLength);
        dz[k] = (float) (out.dz[i] * perLength);
        sx[k] = (float) light.sx[i];
        sy[k] = (float) light.sy[i];
        sz[k] = (float) light.sz[i];
        watts[k] = (float) light.watts[i];
        panel[k] = light.panel[i];
    }

    /** Number of rays. */
    public int count() {
        return count;
    }

    /** Watts of sunlight on the mirror point of ray {@code i} if it were the whole sample. */
    public double watts(int i) {
        return watts[i];
    }

    /** Number of the panel that ray {@code i} comes from. */
    public int panel(int i) {
        return panel[i];
    }

    /** Mirror point of ray {@code i}, m. */
    public Vec point(int i) {
        return new Vec(px[i], py[i], pz[i]);
    }

    /** Direction in which ray {@code i} left the mirror, unit. */
    public Vec direction(int i) {
        return new Vec(dx[i], dy[i], dz[i]);
    }

    /** Direction from mirror point {@code i} to the sun, unit. */
    public Vec towardsSun(int i) {
        return new Vec(sx[i], sy[i], sz[i]);
    }

    /** Mirror points and directions of a batch in another frame; owned by one thread. */
    public static final class Seen {
        /** Mirror point, m. */
        public final double[] px;
        /** Mirror point. */
        public final double[] py;
        /** Mirror point. */
        public final double[] pz;
        /** Direction after the reflection, unit. */
        public final double[] dx;
        /** Direction after the reflection. */
        public final double[] dy;
        /** Direction after the reflection. */
        public final double[] dz;

        /** Room for batches of up to {@code n} rays. */
        public Seen(int n) {
            px = new double[n];
            py = new double[n];
            pz = new double[n];
            dx = new double[n];
            dy = new double[n];
            dz = new double[n];
        }

        /**
         * Sees {@code rays} from another frame.
         *
         * @param rays at most as many as there is room for
         * @param pose of their frame in the other one
         */
        public void turn(ReflectedRays rays, Pose pose) {
            double[] m = pose.rotation().rows();
            Vec o = pose.origin();
            row(px, rays.count, m, 0, rays.px, rays.py, rays.pz, o.x());
            row(py, rays.count, m, 3, rays.px, rays.py, rays.pz, o.y());
            row(pz, rays.count, m, 6, rays.px, rays.py, rays.pz, o.z());
            row(dx, rays.count, m, 0, rays.dx, rays.dy, rays.dz, 0);
            row(dy, rays.count, m, 3, rays.dx, rays.dy, rays.dz, 0);
            row(dz, rays.count, m, 6, rays.dx, rays.dy, rays.dz, 0);
        }

        private static void row(double[] out, int n, double[] m, int at, float[] x, float[] y, float[] z, double o) {
            double a = m[at];
            double b = m[at + 1];
            double c = m[at + 2];
            for (int i = 0; i < n; i++) {
                out[i] = a * x[i] + b * y[i] + c * z[i] + o;
            }
        }
    }
}
