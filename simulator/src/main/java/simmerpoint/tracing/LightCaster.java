package simmerpoint.tracing;

import java.util.Arrays;
import simmerpoint.dish.Mirror;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelTilts;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Rotation;
import simmerpoint.geometry.Vec;
import simmerpoint.sampling.ScrambledSobol;
import simmerpoint.sampling.SobolRun;
import simmerpoint.sampling.UnitCircle;
import simmerpoint.setup.Setup;
import simmerpoint.sun.Sunlight;

/**
 * Casts sunlight onto a dish and reflects it once: quasi-random points in, {@link LightBatch}es out. Immutable; each
 * thread casts through its own {@link Beam}. One bounce only: light that runs into another panel after its reflection
 * is lost.
 *
 * <p>Coordinates of a point, in this order: place on the outline (2), direction of the mirror error, angle from the
 * sun's centre, direction round the sun's centre, size of the mirror error, and sharp or wide beam spread.
 */
public final class LightCaster {
    /** Rays per batch: all arrays of a batch together stay within a core's own cache. */
    public static final int BATCH = 128;

    private static final double LEAST_SINE2 = 1e-24;

    private final MirrorSurface surface;
    private final PanelTilts tilts;
    private final ErrorSpread spread;
    private final SunTable sunTable;
    private final Hiding hiding;
    private final double beam;
    private final double[] turn;
    private final Vec origin;
    private final Vec sunX;
    private final Vec sunY;
    private final Vec sunZ;

    /**
     * Light for one setup.
     *
     * @param surface the dish
     * @param mirror what covers it
     * @param tilts how its panels sit
     * @param sunlight the sun
     * @param setup where everything stands
     * @param jitter standard deviation per axis of the sun's direction seen from a shaking dish, rad
     */
    public LightCaster(
            MirrorSurface surface,
            Mirror mirror,
            PanelTilts tilts,
            Sunlight sunlight,
            Setup setup,
            double jitter) {
        this.surface = surface;
        this.tilts = tilts;
        spread = ErrorSpread.of(mirror, jitter);
        sunTable = new SunTable(sunlight.shape());
        beam = sunlight.beamWattsPerSquareMetre();
        Pose dish = setup.dishInTarget();
        turn = dish.rotation().rows();
        origin = dish.origin();
        Direction sun = setup.sunInTarget();
        Rotation toSun = Rotation.fromZTo(sun);
        sunX = toSun.apply(Direction.X.vec());
        sunY = toSun.apply(Direction.Y.vec());
        sunZ = sun.vec();
        hiding = Hiding.of(surface, dish);
    }

    /** Coordinates each ray needs. */
    public int dimensions() {
        return spread.wideShare() > 0 && spread.wideShare() < 1 ? 7 : 6;
    }

    /** Whether the mirrors have no random error at all, so that each place on the sun gives one sharp ray. */
    public boolean sharp() {
        return spread.none();
    }

    /** Largest standard deviation of the mirror's normal in the plane of incidence, rad. */
    public double largestError() {
        return spread.largest();
    }

    /** Tells whether light is stopped by another panel; shared by those who catch it. */
    public Hiding hiding() {
        return hiding;
    }

    /** Casts the points of one block, batch by batch. For one thread. */
    public final class Beam {
        private final SobolRun points;
        private final double[] u;
        private final double[] v;
        private final double[] w;
        private final double[] cos;
        private final double[] sin;
        private final MirrorPoints mirror;
        private final LightBatch light;
        private final Hiding.Test hidden = hiding.test();

        /**
         * Rays of one block.
         *
         * @param sobol with {@link #dimensions()} coordinates
         * @param block of it
         */
        public Beam(ScrambledSobol sobol, ScrambledSobol.Block block) {
            points = new SobolRun(sobol, block, BATCH);
            int n = points.length();
            u = new double[n];
            v = new double[n];
            w = new double[n];
            cos = new double[n];
            sin = new double[n];
            mirror = new MirrorPoints(n);
            light = new LightBatch(n);
        }

        /** Number of batches in the block. */
        public long batches() {
            return points.runs();
        }

        /** Casts batch {@code k}; the same object is filled anew every time. */
        public LightBatch cast(long k) {
            int n = points.length();
            points.fill(0, k, u);
            points.fill(1, k, v);
            surface.fill(u, v, n, mirror);
            place(n);
            points.fill(3, k, u);
            points.fill(4, k, v);
            aimAtSun(n);
            turnNormals(n);
            weigh(n);
            if (!tilts.none()) {
                tilts.apply(mirror, n);
                turnNormals(n);
            }
            points.fill(2, k, u);
            UnitCircle.fill(u, 0.25, n, cos, sin);
            spreads(k, n);
            reflect(n);
            points.fill(5, k, light.draw);
            if (hiding.possible()) {
                hidden.dropHidden(light);
            }
            return light;
        }

        /** Mirror points into the target frame. */
        private void place(int n) {
            double[] m = turn;
            double ox = origin.x();
            double oy = origin.y();
            double oz = origin.z();
            for (int i = 0; i < n; i++) {
                double x = mirror.x[i];
                double y = mirror.y[i];
                double z = mirror.z[i];
                light.px[i] = m[0] * x + m[1] * y + m[2] * z + ox;
                light.py[i] = m[3] * x + m[4] * y + m[5] * z + oy;
                light.pz[i] = m[6] * x + m[7] * y + m[8] * z + oz;
            }
            System.arraycopy(mirror.panel, 0, light.panel, 0, n);
        }

        /** Where on the sun each ray comes from. */
        private void aimAtSun(int n) {
            sunTable.fill(u, n, w);
            UnitCircle.fill(v, 1, n, cos, sin);
            for (int i = 0; i < n; i++) {
                double a = w[i] * cos[i];
                double b = w[i] * sin[i];
                double c = Math.sqrt(1 - a * a - b * b);
                light.sx[i] = sunX.x() * a + sunY.x() * b + sunZ.x() * c;
                light.sy[i] = sunX.y() * a + sunY.y() * b + sunZ.y() * c;
                light.sz[i] = sunX.z() * a + sunY.z() * b + sunZ.z() * c;
            }
        }

        /** Normals into the target frame; held in the arrays of R₀ until the ray is reflected. */
        private void turnNormals(int n) {
            double[] m = turn;
            for (int i = 0; i < n; i++) {
                double x = mirror.nx[i];
                double y = mirror.ny[i];
                double z = mirror.nz[i];
                light.rx[i] = m[0] * x + m[1] * y + m[2] * z;
                light.ry[i] = m[3] * x + m[4] * y + m[5] * z;
                light.rz[i] = m[6] * x + m[7] * y + m[8] * z;
            }
        }

        /** Watts: beam × area × cosine, for the surface as planned. */
        private void weigh(int n) {
            double wattsPerArea = beam;
            for (int i = 0; i < n; i++) {
                double cosine = light.rx[i] * light.sx[i] + light.ry[i] * light.sy[i] + light.rz[i] * light.sz[i];
                light.watts[i] = wattsPerArea * mirror.area[i] * Math.max(0, cosine);
            }
        }

        /** Each ray's spread² of the reflected ray into {@link #w}. */
        private void spreads(long k, int n) {
            double sharp2 = spread.sharp2();
            if (dimensions() < 7) {
                Arrays.fill(w, 0, n, spread.wideShare() == 1 ? spread.wide2() : sharp2);
                return;
            }
            points.fill(6, k, v);
            for (int i = 0; i < n; i++) {
                w[i] = v[i] < spread.wideShare() ? spread.wide2() : sharp2;
            }
        }

        /** R₀ and the two lines of errors. */
        private void reflect(int n) {
            double slope2 = spread.slope2();
            for (int i = 0; i < n; i++) {
                double nx = light.rx[i];
                double ny = light.ry[i];
                double nz = light.rz[i];
                double sx = light.sx[i];
                double sy = light.sy[i];
                double sz = light.sz[i];
                double cosine = nx * sx + ny * sy + nz * sz;
                double ax = ny * sz - nz * sy;
                double ay = nz * sx - nx * sz;
                double az = nx * sy - ny * sx;
                double sine2 = ax * ax + ay * ay + az * az;
                if (sine2 < LEAST_SINE2) {
                    ax = nz;
                    ay = 0;
                    az = -nx;
                    sine2 = ax * ax + az * az;
                    if (sine2 < 0.25) {
                        ax = 0;
                        ay = nz;
                        az = -ny;
                        sine2 = ay * ay + az * az;
                    }
                }
                double perSine = 1 / Math.sqrt(sine2);
                ax *= perSine;
                ay *= perSine;
                az *= perSine;
                double ix = ay * nz - az * ny;
                double iy = az * nx - ax * nz;
                double iz = ax * ny - ay * nx;
                double quarter = 0.25 * w[i];
                double inPlane = Math.sqrt(slope2 + quarter);
                double across = Math.sqrt(slope2 + quarter / Math.max(cosine * cosine, 0.0025));
                double c = cos[i];
                double s = sin[i];
                double ci = c * inPlane;
                double ca = s * across;
                line(light.a, i, cosine, nx, ny, nz, ci * ix + ca * ax, ci * iy + ca * ay, ci * iz + ca * az);
                ci = -s * inPlane;
                ca = c * across;
                line(light.b, i, cosine, nx, ny, nz, ci * ix + ca * ax, ci * iy + ca * ay, ci * iz + ca * az);
                light.rx[i] = 2 * cosine * nx - sx;
                light.ry[i] = 2 * cosine * ny - sy;
                light.rz[i] = 2 * cosine * nz - sz;
            }
        }

        private void line(
                ErrorLine line,
                int i,
                double cosine,
                double nx,
                double ny,
                double nz,
                double ex,
                double ey,
                double ez) {
            double sx = light.sx[i];
            double sy = light.sy[i];
            double sz = light.sz[i];
            double along = 2 * (ex * sx + ey * sy + ez * sz);
            double size2 = ex * ex + ey * ey + ez * ez;
            double twice = 2 * cosine;
            line.x1[i] = along * nx + twice * ex;
            line.y1[i] = along * ny + twice * ey;
            line.z1[i] = along * nz + twice * ez;
            line.x2[i] = along * ex - size2 * sx;
            line.y2[i] = along * ey - size2 * sy;
            line.z2[i] = along * ez - size2 * sz;
        }
    }
}
