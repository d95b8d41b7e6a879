package simmerpoint.target;

import simmerpoint.pan.GrazingAbsorptance;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.pan.Target;
import simmerpoint.sampling.ArrayFunctions;

/**
 * Intersects batches of reflected rays with a target and adds them to a {@link Tally}, in single precision and, but for the
 * sums, in loops that vectorise. Rays that need the general test (wall and lid) are first listed without branches, then
 * processed (measured: two thirds of the time). Not thread-safe.
 */
final class RayIntersections {
    /** Added to dz² to avoid division by zero; negligible otherwise. */
    private static final float LEAST_DZ2 = 1e-30f;

    private Tally tally;
    private final Cylinder body;
    private final float radius;
    private final boolean isDisc;
    private final Support.Cover support;
    private final float[] x;
    private final float[] y;
    private final float[] distance;
    private final float[] rayParameter;
    private final float[] inward;
    private final float[] wallMargin;
    private final float[] caughtWatts;
    private final float[] absorptance;
    private final float[] crossingWatts;
    private final int[] pending;

    RayIntersections(Target target, Cylinder body, Tally tally, int capacity) {
        this.tally = tally;
        this.body = body;
        radius = (float) target.radiusMetres();
        isDisc = !(target instanceof Pan);
        support = (target instanceof Pan pan ? pan.support() : Support.NONE).cover();
        x = new float[capacity];
        y = new float[capacity];
        distance = new float[capacity];
        rayParameter = new float[capacity];
        inward = new float[capacity];
        wallMargin = new float[capacity];
        caughtWatts = new float[capacity];
        absorptance = new float[capacity];
        crossingWatts = new float[capacity];
        pending = new int[capacity + 1];
    }

    /** Adds to another tally of the same target from now on. */
    void addTo(Tally other) {
        tally = other;
    }

    /**
     * Rays in the target frame.
     *
     * @param px mirror points, m
     * @param py mirror points
     * @param pz mirror points
     * @param dx directions, unit
     * @param dy directions
     * @param dz directions
     */
    record Rays(float[] px, float[] py, float[] pz, float[] dx, float[] dy, float[] dz) {}

    /**
     * Adds the first {@code n} rays.
     *
     * @param watts of each ray; set to 0 where it misses
     * @param share factor on all watts
     */
    void add(Rays rays, float[] watts, double share, int n) {
        intersectPlane(rays, n);
        if (support.any()) {
            stopAtSupport(rays, watts, share, n);
        }
        separate(rays, watts, n);
        GrazingAbsorptance.fill(rays.dz, n, absorptance);
        addSums(watts, share, n);
        if (tally.hasMaps()) {
            addMoments(share, n);
            tally.addToMaps(x, y, distance, caughtWatts, crossingWatts, share, n);
        }
        int listed = isDisc ? 0 : listOthers(rays, watts, n);
        for (int k = 0; k < listed; k++) {
            intersectBody(rays, watts, share, pending[k]);
        }
        System.arraycopy(caughtWatts, 0, watts, 0, n);
    }

    /** Where the lines of the rays cross the target's plane; far away for rays parallel to it. */
    private void intersectPlane(Rays rays, int n) {
        float[] pz = rays.pz;
        float[] dz = rays.dz;
        for (int i = 0; i < n; i++) {
            rayParameter[i] = -pz[i] * dz[i] / (dz[i] * dz[i] + LEAST_DZ2);
        }
        pointOnRay(rays.px, rays.dx, x, n);
        pointOnRay(rays.py, rays.dy, y, n);
        for (int i = 0; i < n; i++) {
            distance[i] = (float) Math.sqrt(x[i] * x[i] + y[i] * y[i]);
        }
    }

    private void pointOnRay(float[] from, float[] direction, float[] to, int n) {
        for (int i = 0; i < n; i++) {
            to[i] = from[i] + rayParameter[i] * direction[i];
        }
    }

    private void stopAtSupport(Rays rays, float[] watts, double share, int n) {
        for (int i = 0; i < n; i++) {
            if (rays.pz[i] < 0 && rays.dz[i] > 0 && support.covers(x[i], y[i])) {
                tally.addStopped(watts[i] * share);
                watts[i] = 0;
            }
        }
    }

    /** All bits set where {@code a} is below zero, else none: a comparison without a branch. */
    static int negativeMask(float a) {
        return Float.floatToRawIntBits(a) >> 31;
    }

    static float masked(float a, int mask) {
        return Float.intBitsToFloat(Float.floatToRawIntBits(a) & mask);
    }

    /** Watts of each ray that cross the plane from below, and that are caught there. */
    private void separate(Rays rays, float[] watts, int n) {
        float[] pz = rays.pz;
        float[] dz = rays.dz;
        for (int i = 0; i < n; i++) {
            crossingWatts[i] = watts[i] * ArrayFunctions.above0(-pz[i]);
        }
        for (int i = 0; i < n; i++) {
            crossingWatts[i] *= ArrayFunctions.above0(dz[i]);
        }
        for (int i = 0; i < n; i++) {
            caughtWatts[i] = crossingWatts[i] * ArrayFunctions.notBelow0(radius - distance[i]);
        }
    }

    /** All sums in one loop: each waits for its last addition, and so they wait together (measured: half the time of three loops). */
    private void addSums(float[] watts, double share, int n) {
        double all = 0;
        double underside = 0;
        double absorbable = 0;
        for (int i = 0; i < n; i++) {
            all += watts[i];
            underside += caughtWatts[i];
            absorbable += caughtWatts[i] * absorptance[i];
        }
        tally.missed += (all - underside) * share;
        tally.underside += underside * share;
        tally.undersideAbsorbable += absorbable * share;
    }

    private void addMoments(double share, int n) {
        double mx = 0;
        double my = 0;
        double mxx = 0;
        double mxy = 0;
        double myy = 0;
        for (int i = 0; i < n; i++) {
            float wx = caughtWatts[i] * x[i];
            float wy = caughtWatts[i] * y[i];
            mx += wx;
            my += wy;
            mxx += wx * x[i];
            mxy += wx * y[i];
            myy += wy * y[i];
        }
        tally.moments[0] += mx * share;
        tally.moments[1] += my * share;
        tally.moments[2] += mxx * share;
        tally.moments[3] += mxy * share;
        tally.moments[4] += myy * share;
    }

    /**
     * Lists rays with light that may meet wall or lid: those that do not cross the plane, and those that cross it outside the
     * underside on their way to the wall. Returns their number.
     */
    private int listOthers(Rays rays, float[] watts, int n) {
        float[] dx = rays.dx;
        float[] dy = rays.dy;
        float radius2 = radius * radius;
        for (int i = 0; i < n; i++) {
            inward[i] = x[i] * dx[i] + y[i] * dy[i];
        }
        for (int i = 0; i < n; i++) {
            wallMargin[i] = (dx[i] * dx[i] + dy[i] * dy[i]) * (distance[i] * distance[i] - radius2);
        }
        for (int i = 0; i < n; i++) {
            wallMargin[i] = ArrayFunctions.larger(inward[i], wallMargin[i] - inward[i] * inward[i]);
        }
        for (int i = 0; i < n; i++) {
            wallMargin[i] = crossingWatts[i] * ArrayFunctions.notBelow0(wallMargin[i]) + caughtWatts[i] - watts[i];
        }
        int k = 0;
        for (int i = 0; i < n; i++) {
            pending[k] = i;
            k -= negativeMask(wallMargin[i]);
        }
        return k;
    }

    /** A ray that counts as missed so far. */
    private void intersectBody(Rays rays, float[] watts, double share, int i) {
        int face = body.intersect(rays.px[i], rays.py[i], rays.pz[i], rays.dx[i], rays.dy[i], rays.dz[i]);
        if (face == Cylinder.WALL || face == Cylinder.LID) {
            double caught = (watts[i] - caughtWatts[i]) * share;
            tally.missed -= caught;
            tally.addBodyHit(body, face, rays.dx[i], rays.dy[i], rays.dz[i], 1, caught);
            caughtWatts[i] = watts[i];
        }
    }
}
