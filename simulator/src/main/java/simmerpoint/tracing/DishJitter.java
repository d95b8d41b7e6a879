package simmerpoint.tracing;

import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;
import simmerpoint.sampling.ArrayFunctions;
import simmerpoint.sampling.FastSignedRayleigh;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Setup;

/**
 * Random turns of a dish that shakes, one for each ray: the axis is tilted by two independent Gaussian angles, up and to
 * the side, of standard deviation σ each, as {@link Aim} turns a dish. Dish and ray are turned about the mount; if the dish
 * carries the pan, that follows, which in the target frame is a turn about the pan's centre (derived here: the pan's centre
 * m goes to R(m − mount) + mount, so a mirror point p is then R(p − m) away from it).
 *
 * <p>A turn that takes the axis z to d is R v = v + w × v + w × (w × v)/(1 + cos θ), w = z × d of length sin θ. Exact at any
 * angle. All vectors are in the target frame.
 */
final class DishJitter {
    private final double sigma;
    private final Vec pivot;
    private final Vec dishX;
    private final Vec dishY;

    /** Of a dish in its mean position; its mount is in the dish frame. */
    DishJitter(Aim aim, Vec mount, Setup setup) {
        Pose dish = setup.dishInTarget();
        sigma = aim.jitterRadians();
        pivot = aim.panCarriedBy() == Aim.PanCarrier.DISH ? Vec.ZERO : dish.toParent(mount);
        dishX = dish.rotation().apply(Direction.X.vec());
        dishY = dish.rotation().apply(Direction.Y.vec());
    }

    /** Whether the dish stands still. */
    boolean none() {
        return sigma == 0;
    }

    /** The turns of one batch. Not thread-safe. */
    final class Turns {
        private final double[] wx;
        private final double[] wy;
        private final double[] wz;
        private final double[] perCosine;
        private final float[] cos;
        private final float[] sin;
        private final float[] scratch;

        /** For {@code n} rays. */
        Turns(int n) {
            wx = new double[n];
            wy = new double[n];
            wz = new double[n];
            perCosine = new double[n];
            cos = new float[n];
            sin = new float[n];
            scratch = new float[n];
        }

        /**
         * Draws the turns from two uniform numbers for each ray, which are overwritten: a signed radius along a line at some
         * azimuth.
         */
        void draw(float[] radius, float[] azimuth) {
            int n = wx.length;
            FastSignedRayleigh.inverse(radius, n, cos);
            for (int i = 0; i < n; i++) {
                azimuth[i] *= 0.5f;
            }
            ArrayFunctions.fullCircle(azimuth, n, cos, sin, scratch);
            for (int i = 0; i < n; i++) {
                double angle = sigma * radius[i];
                double sine = Math.sin(angle);
                double x = sine * cos[i];
                double y = sine * sin[i];
                wx[i] = x * dishY.x() - y * dishX.x();
                wy[i] = x * dishY.y() - y * dishX.y();
                wz[i] = x * dishY.z() - y * dishX.z();
                perCosine[i] = 1 / (1 + Math.cos(angle));
            }
        }

        /** Turns points about the pivot. */
        void turnPoints(float[] x, float[] y, float[] z) {
            for (int i = 0; i < wx.length; i++) {
                Vec p = turned(i, 1, x[i] - pivot.x(), y[i] - pivot.y(), z[i] - pivot.z());
                x[i] = (float) (p.x() + pivot.x());
                y[i] = (float) (p.y() + pivot.y());
                z[i] = (float) (p.z() + pivot.z());
            }
        }

        /** Turns directions. */
        void turnDirections(float[] x, float[] y, float[] z) {
            for (int i = 0; i < wx.length; i++) {
                Vec d = turned(i, 1, x[i], y[i], z[i]);
                x[i] = (float) d.x();
                y[i] = (float) d.y();
                z[i] = (float) d.z();
            }
        }

        /** Where the point of ray {@code i} would be with the dish in its mean position. */
        Vec pointAtRest(int i, double x, double y, double z) {
            return turned(i, -1, x - pivot.x(), y - pivot.y(), z - pivot.z()).plus(pivot);
        }

        /** Its direction as a dish in its mean position would see it. */
        Vec directionAtRest(int i, double x, double y, double z) {
            return turned(i, -1, x, y, z);
        }

        private Vec turned(int i, int sense, double x, double y, double z) {
            double ax = sense * wx[i];
            double ay = sense * wy[i];
            double az = sense * wz[i];
            double cx = ay * z - az * y;
            double cy = az * x - ax * z;
            double cz = ax * y - ay * x;
            double k = perCosine[i];
            return new Vec(
                    x + cx + k * (ay * cz - az * cy),
                    y + cy + k * (az * cx - ax * cz),
                    z + cz + k * (ax * cy - ay * cx));
        }
    }
}
