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

    /** More than any margin of a ray that can count. */
    private static final float FAR = 1e30f;

    private final Tally tally;
    private final Cylinder body;
    private final float radius;
    private final boolean isDisc;
    private final Support.Cover support;
    private final float[] x;
    private final float[] y;
    private final float[] distance;
    private final float[] rayParameter;
    private final float[] wallMargin;
    private final int[] outsideMask;
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
        wallMargin = new float[capacity];
        outsideMask = new int[capacity];
        caughtWatts = new float[capacity];
        absorptance = new float[capacity];
        crossingWatts = new float[capacity];
        pending = new int[capacity + 1];
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
        computeWallMargins(rays, n);
        int listed = classify(rays, watts, share, n);
        addUnderside(rays.dz, share, n);
        if (tally.hasMaps()) {
            addMoments(share, n);
            tally.addToMaps(x, y, distance, outsideMask, crossingWatts, share, n);
        }
        intersectBody(rays, watts, share, listed);
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

    /** For each ray: below zero if it may meet the wall after it has crossed the plane outside the underside. */
    private void computeWallMargins(Rays rays, int n) {
        float[] dx = rays.dx;
        float[] dy = rays.dy;
        float radius2 = radius * radius;
        float bareDisc = isDisc ? FAR : 0;
        for (int i = 0; i < n; i++) {
            float inward = x[i] * dx[i] + y[i] * dy[i];
            float across2 = inward * inward - (dx[i] * dx[i] + dy[i] * dy[i]) * (distance[i] * distance[i] - radius2);
            wallMargin[i] = bareDisc + ArrayFunctions.larger(inward, -across2);
        }
    }

    /** All bits set where {@code a} is below zero, else none: a comparison without a branch. */
    static int negativeMask(float a) {
        return Float.floatToRawIntBits(a) >> 31;
    }

    static float masked(float a, int mask) {
        return Float.intBitsToFloat(Float.floatToRawIntBits(a) & mask);
    }

    /**
     * Separates rays that hit the underside, rays that miss, and rays that need the general test. Lists the latter and
     * returns their number.
     */
    private int classify(Rays rays, float[] watts, double share, int n) {
        float[] pz = rays.pz;
        float[] dz = rays.dz;
        int k = 0;
        double missed = 0;
        for (int i = 0; i < n; i++) {
            int crosses = negativeMask(pz[i]) & negativeMask(0 - dz[i]);
            outsideMask[i] = negativeMask(radius - distance[i]);
            int caught = crosses & ~outsideMask[i];
            int past = crosses & outsideMask[i] & ~negativeMask(wallMargin[i]);
            crossingWatts[i] = masked(watts[i], crosses);
            caughtWatts[i] = masked(watts[i], caught);
            pending[k] = i;
            k += 1 + (caught | past);
            missed += masked(watts[i], past);
            watts[i] = masked(watts[i], ~past);
        }
        tally.missed += missed * share;
        return k;
    }

    private void addUnderside(float[] dz, double share, int n) {
        double absorbable = 0;
        double underside = 0;
        GrazingAbsorptance.fill(dz, n, absorptance);
        for (int i = 0; i < n; i++) {
            double w = caughtWatts[i];
            underside += w;
            absorbable += w * absorptance[i];
        }
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
            double w = caughtWatts[i];
            double wx = w * x[i];
            double wy = w * y[i];
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

    private void intersectBody(Rays rays, float[] watts, double share, int listed) {
        for (int k = 0; k < listed; k++) {
            int i = pending[k];
            int face = isDisc ? Cylinder.NOTHING : intersect(rays, i);
            tally.addBodyHit(body, face, rays.dx[i], rays.dy[i], rays.dz[i], 1, watts[i] * share);
            if (face == Cylinder.NOTHING) {
                watts[i] = 0;
            }
        }
    }

    private int intersect(Rays rays, int i) {
        return body.intersect(rays.px[i], rays.py[i], rays.pz[i], rays.dx[i], rays.dy[i], rays.dz[i]);
    }
}
