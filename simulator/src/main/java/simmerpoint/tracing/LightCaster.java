package simmerpoint.tracing;

import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.built.BuiltDish;
import simmerpoint.dish.built.PanelTilts;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Rotation;
import simmerpoint.geometry.Vec;
import simmerpoint.sampling.FastSinCos;
import simmerpoint.sampling.ScrambledSobol;
import simmerpoint.sampling.SobolBatches;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Setup;
import simmerpoint.sun.Sunlight;

/**
 * Samples sunlight on a dish: quasi-random points in, {@link LightBatch}es out. Immutable; each thread uses its own {@link
 * BatchCaster}. One reflection only: light that hits another panel afterwards is lost.
 *
 * <p>Coordinates of a point, in this order: position on the outline (2), direction of the mirror error, angle from the
 * sun's centre, direction about the sun's centre, size of the mirror error; then, where there are any, sharp or wide beam
 * errors, and the turn of a dish that shakes (2).
 */
public final class LightCaster {
    /** Rays per batch: all arrays of a batch fit into a core's own cache. */
    public static final int BATCH = 128;

    /** Keeps 1/sin i finite at exactly normal incidence. */
    private static final double LEAST_SINE2 = 1e-300;

    /** Keeps the tilt equivalent to beam spread finite at grazing incidence, beyond 87°. */
    private static final double LEAST_COSINE2 = 0.0025;

    private final MirrorSurface surface;
    private final PanelTilts tilts;
    private final MirrorErrors errors;
    private final DishJitter jitter;
    private final SunAngleTable sunTable;
    private final Blocking blocking;
    private final double beam;
    private final double[] rotation;
    private final Vec origin;
    private final Vec sunX;
    private final Vec sunY;
    private final Vec sunZ;

    /**
     * For one setup.
     *
     * @param dish as it was built
     * @param seed of the tilts of its panels
     * @param sunlight the sun
     * @param setup where everything stands
     * @param aim how the dish shakes; drift and turn are in the setup
     */
    public LightCaster(BuiltDish dish, long seed, Sunlight sunlight, Setup setup, Aim aim) {
        surface = dish.surface(setup.sunInDish());
        tilts = dish.panelTilts(surface, seed);
        errors = MirrorErrors.of(dish.mirrors());
        jitter = new DishJitter(aim, dish.layout().mount(aim.mountMetres()), setup);
        sunTable = SunAngleTable.of(sunlight.shape());
        beam = sunlight.beamWattsPerSquareMetre();
        Pose pose = setup.dishInTarget();
        rotation = pose.rotation().rows();
        origin = pose.origin();
        Rotation toSun = pose.rotation().after(Rotation.fromZTo(setup.sunInDish()));
        sunX = toSun.apply(Direction.X.vec());
        sunY = toSun.apply(Direction.Y.vec());
        sunZ = toSun.apply(Direction.Z.vec());
        blocking = Blocking.of(surface, pose);
    }

    /** The surface of the dish. */
    public MirrorSurface surface() {
        return surface;
    }

    /** Number of coordinates of each sample point. */
    public int dimensions() {
        return jitterCoordinate() + (jitter.none() ? 0 : 2);
    }

    private int jitterCoordinate() {
        return errors.sharpOrWide() ? 7 : 6;
    }

    /** Whether the mirrors have no random error. */
    public boolean errorFree() {
        return errors.isZero();
    }

    /** Blocking of light by other panels. */
    public Blocking blocking() {
        return blocking;
    }

    /** Casts the points of one block batch by batch. Not thread-safe. */
    public final class BatchCaster {
        private final SobolBatches points;
        private final int n;
        private final double[] u;
        private final double[] v;
        private final double[] w;
        private final double[] cos;
        private final double[] sin;
        private final MirrorPoints mirror;
        private final DishJitter.Turns turns;
        private final LightBatch light;
        private final Blocking.Test blockingTest = blocking.test();

        /**
         * For one block.
         *
         * @param sobol with {@link #dimensions()} coordinates
         * @param block of it
         */
        public BatchCaster(ScrambledSobol sobol, ScrambledSobol.Block block) {
            points = new SobolBatches(sobol, block, BATCH);
            n = points.length();
            u = new double[n];
            v = new double[n];
            w = new double[n];
            cos = new double[n];
            sin = new double[n];
            mirror = new MirrorPoints(n);
            turns = jitter.new Turns(jitter.none() ? 0 : n);
            light = new LightBatch(n, jitter.none() ? null : turns, surface.zones());
        }

        /** Number of batches in the block. */
        public long batches() {
            return points.batches();
        }

        /** Rays per batch. */
        public int batchSize() {
            return n;
        }

        /** Casts batch {@code k} into the same object every time. */
        public LightBatch cast(long k) {
            points.fill(0, k, u);
            points.fill(1, k, v);
            surface.fill(u, v, n, mirror);
            System.arraycopy(mirror.panel, 0, light.panel, 0, n);
            transform(mirror.x, mirror.y, mirror.z, origin, light.px, light.py, light.pz);
            if (!jitter.none()) {
                points.fill(jitterCoordinate(), k, u);
                points.fill(jitterCoordinate() + 1, k, v);
                turns.draw(u, v);
                turns.turnPoints(light.px, light.py, light.pz);
            }
            sampleSunDirections(k);
            transformNormals();
            computeWatts();
            if (!tilts.none()) {
                tilts.apply(mirror, n);
                transformNormals();
            }
            computeErrorLines(k);
            points.fill(5, k, light.errorSample);
            if (blocking.possible()) {
                blockingTest.removeShaded(light);
            }
            return light;
        }

        /**
         * Watts on the mirror without panel tilt. The sun's shape is sampled as a beam meter sees it, weighted by the cosine
         * to the sun's centre (still in {@link #w}), so a ray carries beam × area × cos i ÷ that cosine.
         */
        private void computeWatts() {
            for (int i = 0; i < n; i++) {
                light.watts[i] = beam * mirror.area[i] * Math.max(0, light.cosine[i]) / w[i];
            }
        }

        /** Transforms vectors of the dish frame to the target frame. */
        private void transform(double[] x, double[] y, double[] z, Vec o, double[] tx, double[] ty, double[] tz) {
            LightBatch.transform(n, rotation, o, x, y, z, tx, ty, tz);
        }

        /** Directions to the points on the sun. */
        private void sampleSunDirections(long k) {
            points.fill(3, k, u);
            points.fill(4, k, v);
            sunTable.fill(u, n, w);
            FastSinCos.fill(v, 1, n, cos, sin);
            ArrayKernels.product(u, n, 1, w, cos);
            ArrayKernels.product(v, n, 1, w, sin);
            for (int i = 0; i < n; i++) {
                w[i] = Math.sqrt(1 - w[i] * w[i]);
            }
            ArrayKernels.combine(light.sx, n, sunX.x(), u, sunY.x(), v, sunZ.x(), w, 0);
            ArrayKernels.combine(light.sy, n, sunX.y(), u, sunY.y(), v, sunZ.y(), w, 0);
            ArrayKernels.combine(light.sz, n, sunX.z(), u, sunY.z(), v, sunZ.z(), w, 0);
        }

        /** Transforms normals to the target frame and computes the cosine of incidence. */
        private void transformNormals() {
            transform(mirror.nx, mirror.ny, mirror.nz, Vec.ZERO, light.nx, light.ny, light.nz);
            if (!jitter.none()) {
                turns.turnDirections(light.nx, light.ny, light.nz);
            }
            ArrayKernels.dot(light.cosine, n, light.nx, light.sx, light.ny, light.sy, light.nz, light.sz);
        }

        /** Axes across the plane of incidence and the two error lines. */
        private void computeErrorLines(long k) {
            LightBatch l = light;
            ArrayKernels.difference(l.cx, n, l.ny, l.sz, l.nz, l.sy);
            ArrayKernels.difference(l.cy, n, l.nz, l.sx, l.nx, l.sz);
            ArrayKernels.difference(l.cz, n, l.nx, l.sy, l.ny, l.sx);
            ArrayKernels.inverseLength(l.inverseSine, n, l.cx, l.cy, l.cz, LEAST_SINE2);
            points.fill(2, k, u);
            FastSinCos.fill(u, 0.25, n, cos, sin);
            if (errors.sharpOrWide()) {
                points.fill(6, k, v);
            }
            errors.slopeVariances(l.panel, l.zones, n, u);
            errors.quarterBeamVariances(l.panel, l.zones, v, n, w);
            for (int i = 0; i < n; i++) {
                double cosine2 = Math.max(l.cosine[i] * l.cosine[i], LEAST_COSINE2);
                v[i] = Math.sqrt(u[i] + w[i] / cosine2);
            }
            for (int i = 0; i < n; i++) {
                w[i] = Math.sqrt(u[i] + w[i]);
            }
            for (int i = 0; i < n; i++) {
                l.tiltInPlane[i] = cos[i] * w[i];
                l.tiltAcross[i] = sin[i] * v[i];
                l.tiltInPlane[n + i] = -sin[i] * w[i];
                l.tiltAcross[n + i] = cos[i] * v[i];
            }
        }
    }
}
