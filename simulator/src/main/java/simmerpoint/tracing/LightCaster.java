package simmerpoint.tracing;

import java.util.Arrays;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.built.BuiltDish;
import simmerpoint.dish.built.PanelTilts;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Rotation;
import simmerpoint.geometry.Vec;
import simmerpoint.sampling.ArrayFunctions;
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
 * errors, and the turn of a dish that shakes (2). A dish of equal sectors has the place across its sector third, and the direction of
 * the mirror error last. Directions count from that in which the place lies from the axis. Places have even numbers on the
 * rings of a dish ({@link EvenRings}).
 */
public final class LightCaster {
    /** Rays per batch: what a loop costs before and after its wide part is shared by many (measured: 128 is a sixth slower). */
    public static final int BATCH = 512;

    /** Keeps the tilt equivalent to beam spread finite at grazing incidence, beyond 87°. */
    private static final float LEAST_COSINE2 = 0.0025f;

    /** Keeps the stretch of a ray without any error at 0. */
    private static final float LEAST_ERROR = 1e-20f;

    /** Keeps places in their sector, whatever is rounded. */
    private static final double BELOW_1 = 1 - 0x1p-30;

    /** Takes the digits after the point off a number of single precision that is added and taken off again. */
    private static final float WHOLE = 0x1p23f;

    /** Keeps vectors square to a normal finite where it looks straight down. */
    private static final float MORE_THAN_1 = 1 + 0x1p-22f;

    /** Coordinate of the place across a sector, of a dish that has equal ones; of others the direction of the mirror error. */
    private static final int ACROSS = 2;

    private final MirrorSurface surface;
    private final EvenRings rings;
    private final PanelTilts tilts;
    private final MirrorErrors errors;
    private final DishJitter jitter;
    private final SunAngleTable sunTable;
    private final Blocking blocking;
    private final double beam;
    private final double[] rotation;
    private final Vec origin;
    private final double[] sunAxes;

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
        rings = new EvenRings(surface.ringBorders());
        tilts = dish.panelTilts(surface, seed);
        errors = MirrorErrors.of(dish.mirrors());
        jitter = new DishJitter(aim, dish.layout().mount(aim.mountMetres()), setup);
        sunTable = SunAngleTable.of(sunlight.shape());
        beam = sunlight.beamWattsPerSquareMetre();
        Pose pose = setup.dishInTarget();
        rotation = pose.rotation().rows();
        origin = pose.origin();
        Rotation toSun = pose.rotation().after(Rotation.fromZTo(setup.sunInDish()));
        sunAxes = toSun.rows();
        blocking = Blocking.of(surface, pose);
    }

    /** The surface of the dish. */
    public MirrorSurface surface() {
        return surface;
    }

    /** Number of coordinates of each sample point. */
    public int dimensions() {
        return jitterCoordinate() + (jitter.none() ? 0 : 2) + (surface.sectors() > 1 ? 1 : 0);
    }

    /** Of the mirror error. */
    private int directionCoordinate() {
        return surface.sectors() > 1 ? dimensions() - 1 : ACROSS;
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
        private SobolBatches points;
        private final int n;
        private final double[] u;
        private final double[] v;
        private final float[] a;
        private final float[] b;
        private final float[] c;
        private final float[] cos;
        private final float[] sin;
        private final float[] spread;
        /** About the places' angles round the axis, as shares of a full circle. */
        private final float[] wayRound;
        /** How much more each place stands for than if places were spread evenly over the outline. */
        private final float[] placeScale;

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
            a = new float[n];
            b = new float[n];
            c = new float[n];
            cos = new float[n];
            sin = new float[n];
            spread = new float[n];
            wayRound = new float[n];
            placeScale = new float[n];
            Arrays.fill(placeScale, 1);
            mirror = new MirrorPoints(n);
            turns = jitter.new Turns(jitter.none() ? 0 : n);
            light = new LightBatch(n, jitter.none() ? null : turns, surface.zones(), beam);
        }

        /** Goes on with another block of as many or more points. */
        public void goOn(ScrambledSobol sobol, ScrambledSobol.Block block) {
            points = new SobolBatches(sobol, block, n);
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
            choosePlaces(k);
            surface.fill(u, v, n, mirror);
            System.arraycopy(mirror.panel, 0, light.panel, 0, n);
            light.zone = mirror.zone;
            transform(mirror.x, mirror.y, mirror.z, origin, light.px, light.py, light.pz);
            if (!jitter.none()) {
                points.fill(jitterCoordinate(), k, a);
                points.fill(jitterCoordinate() + 1, k, b);
                turns.draw(a, b);
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
            light.choice = points.trailingDigits(5, k);
            if (blocking.possible()) {
                blockingTest.removeShaded(light);
            }
            return light;
        }

        /**
         * Numbers for places on the outline. Equal sectors have much the same light, so a coordinate of its own says where in its sector a
         * place is: what differs within a sector is then sampled by all points together, not anew by the few of each.
         */
        private void choosePlaces(long k) {
            points.fill(0, k, u);
            int sectors = surface.sectors();
            if (sectors > 1) {
                points.fill(ACROSS, k, v);
                double share = 1.0 / sectors;
                for (int i = 0; i < n; i++) {
                    u[i] = (Math.floor(u[i] * sectors) + v[i] * BELOW_1) * share;
                }
            }
            points.fill(1, k, v);
            if (!rings.none()) {
                rings.spread(v, n, placeScale);
            }
            ArrayKernels.round(u, n, wayRound);
        }

        /**
         * Makes directions, as shares of one of so many equal parts of a circle, count from that in which each place lies from the axis, not from one for the
         * whole dish: light is much the same all round a dish if it is seen that way. Nothing but a turn, so they stay uniform.
         */
        private void countFromPlaces(float[] shares, int parts) {
            for (int i = 0; i < n; i++) {
                float all = shares[i] + parts * wayRound[i];
                shares[i] = all - ((all + WHOLE) - WHOLE) + 0.5f;
            }
        }

        /**
         * Watts on the mirror without panel tilt. The sun's shape is sampled as a beam meter sees it, weighted by the cosine
         * to the sun's centre (still in {@link #c}), so a ray carries beam × area × cos i ÷ that cosine.
         */
        private void computeWatts() {
            ArrayKernels.round(mirror.area, n, a);
            for (int i = 0; i < n; i++) {
                light.watts[i] = placeScale[i] * a[i] * ArrayFunctions.positivePart(light.cosine[i]) / c[i];
            }
        }

        /** Transforms vectors of the dish frame to the target frame. */
        private void transform(double[] x, double[] y, double[] z, Vec o, float[] tx, float[] ty, float[] tz) {
            ArrayKernels.round(x, n, a);
            ArrayKernels.round(y, n, b);
            ArrayKernels.round(z, n, cos);
            LightBatch.transform(n, rotation, o, a, b, cos, tx, ty, tz);
        }

        /** Directions to the points on the sun; leaves their cosines to the sun's centre in {@link #c}. */
        private void sampleSunDirections(long k) {
            points.fill(3, k, a);
            sunTable.fill(a, n, b);
            points.fill(4, k, a);
            countFromPlaces(a, 1);
            ArrayFunctions.fullCircle(a, n, cos, sin, c);
            ArrayKernels.product(cos, n, b, cos);
            ArrayKernels.product(sin, n, b, sin);
            for (int i = 0; i < n; i++) {
                c[i] = (float) Math.sqrt(1 - b[i] * b[i]);
            }
            LightBatch.transform(n, sunAxes, Vec.ZERO, cos, sin, c, light.sx, light.sy, light.sz);
        }

        /** Transforms normals to the target frame and computes the cosine of incidence. */
        private void transformNormals() {
            transform(mirror.nx, mirror.ny, mirror.nz, Vec.ZERO, light.nx, light.ny, light.nz);
            if (!jitter.none()) {
                turns.turnDirections(light.nx, light.ny, light.nz);
            }
            ArrayKernels.dot(light.cosine, n, light.nx, light.sx, light.ny, light.sy, light.nz, light.sz);
        }

        /**
         * The two error lines: orthogonal unit vectors g square to the normal, of random direction, stretched to the errors in the
         * plane of incidence and across it.
         */
        private void computeErrorLines(long k) {
            points.fill(directionCoordinate(), k, a);
            countFromPlaces(a, 4);
            ArrayFunctions.quarterCircle(a, n, cos, sin, b);
            tangents(light.tilts[0]);
            quarterTurn(light.tilts[0], light.tilts[1]);
            if (errors.spread()) {
                stretchBySpread(k);
                return;
            }
            errors.slopeErrors(light, a);
            for (LightBatch.Tilts line : light.tilts) {
                ArrayKernels.product(line.x(), n, a, line.x());
                ArrayKernels.product(line.y(), n, a, line.y());
                ArrayKernels.product(line.z(), n, a, line.z());
            }
        }

        /**
         * Unit vectors square to the normals, of the directions in {@link #cos} and {@link #sin}: x, y and z the dish's axes, the rotation
         * that takes z to n takes p·x + q·y to p·x + q·y − g(z + n), g = (p·x·n + q·y·n)/(1 + z·n) (derived here). By the dish's axes,
         * so that light is the same whatever target it is cast for; a mirror's normal looks up from the dish.
         */
        private void tangents(LightBatch.Tilts out) {
            alongAxis(0);
            ArrayKernels.product(b, n, c, cos);
            alongAxis(1);
            for (int i = 0; i < n; i++) {
                b[i] += sin[i] * c[i];
            }
            alongAxis(2);
            for (int i = 0; i < n; i++) {
                b[i] /= MORE_THAN_1 + c[i];
            }
            tangents(0, light.nx, out.x());
            tangents(1, light.ny, out.y());
            tangents(2, light.nz, out.z());
        }

        /** Components of the normals along an axis of the dish, into {@link #c}. */
        private void alongAxis(int axis) {
            float x = (float) rotation[axis];
            float y = (float) rotation[3 + axis];
            float z = (float) rotation[6 + axis];
            for (int i = 0; i < n; i++) {
                c[i] = x * light.nx[i] + y * light.ny[i] + z * light.nz[i];
            }
        }

        private void tangents(int row, float[] normal, float[] out) {
            float x = (float) rotation[3 * row];
            float y = (float) rotation[3 * row + 1];
            float z = (float) rotation[3 * row + 2];
            for (int i = 0; i < n; i++) {
                out[i] = x * cos[i] + y * sin[i] - b[i] * (z + normal[i]);
            }
        }

        /** The same vectors a quarter turn about the normals further: n × g. */
        private void quarterTurn(LightBatch.Tilts of, LightBatch.Tilts out) {
            ArrayKernels.difference(out.x(), n, light.ny, of.z(), light.nz, of.y());
            ArrayKernels.difference(out.y(), n, light.nz, of.x(), light.nx, of.z());
            ArrayKernels.difference(out.z(), n, light.nx, of.y(), light.ny, of.x());
        }

        /**
         * Turns unit vectors g into error lines w·g + (v − w)(a·g)a: errors of standard deviation w in the plane of incidence and v
         * along the unit vector a across it. With c = n × s = a·sin i and v² − w² = q·tan²i, q a quarter of the beam spread², the
         * second term is q/(cos²i·(v + w))·(c·g)c, also where there is no plane of incidence (derived here).
         */
        private void stretchBySpread(long k) {
            if (errors.sharpOrWide()) {
                points.fill(6, k, c);
            }
            errors.slopeErrors(light, b);
            errors.quarterBeamVariances(light, c, spread);
            for (int i = 0; i < n; i++) {
                a[i] = (float) Math.sqrt(b[i] * b[i] + spread[i]);
            }
            for (int i = 0; i < n; i++) {
                float cosine2 = ArrayFunctions.larger(light.cosine[i] * light.cosine[i], LEAST_COSINE2);
                float across = (float) Math.sqrt(b[i] * b[i] + spread[i] / cosine2);
                spread[i] = spread[i] / (cosine2 * (across + a[i]) + LEAST_ERROR);
            }
            ArrayKernels.difference(b, n, light.ny, light.sz, light.nz, light.sy);
            ArrayKernels.difference(c, n, light.nz, light.sx, light.nx, light.sz);
            ArrayKernels.difference(cos, n, light.nx, light.sy, light.ny, light.sx);
            stretch(light.tilts[0]);
            stretch(light.tilts[1]);
        }

        private void stretch(LightBatch.Tilts line) {
            ArrayKernels.dot(sin, n, b, line.x(), c, line.y(), cos, line.z());
            ArrayKernels.product(sin, n, spread, sin);
            stretch(line.x(), b);
            stretch(line.y(), c);
            stretch(line.z(), cos);
        }

        private void stretch(float[] tilt, float[] across) {
            for (int i = 0; i < n; i++) {
                tilt[i] = a[i] * tilt[i] + sin[i] * across[i];
            }
        }
    }
}
