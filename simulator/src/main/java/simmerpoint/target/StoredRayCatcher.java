package simmerpoint.target;

import java.util.Optional;
import simmerpoint.dish.built.MirrorShares;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.GrazingAbsorptance;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.pan.Target;
import simmerpoint.tracing.ReflectedRays;

/**
 * Intersects stored rays with a target that may stand elsewhere than when they were cast, and adds the result to a {@link
 * Tally}. Shading is computed anew; each ray is intersected once. Faster than {@link LightCatcher} and noisier. One instance
 * per thread and replicate; only for panels that do not block each other.
 *
 * <p>Rays that need the general test (shadow near the pan, wall and lid) are first listed without branches, then processed
 * (measured: two thirds of the time).
 */
public final class StoredRayCatcher {
    /** Largest batch: its intermediate results fit into the first-level cache. */
    public static final int MAX_BATCH = 512;

    /** Added to dz² to avoid division by zero; negligible otherwise. */
    private static final float LEAST_DZ2 = 1e-30f;

    private final Tally tally;
    private final Cylinder body;
    private final float radius;
    private final boolean isDisc;
    private final MirrorShares shares;
    private final double reflectedShare;
    private final Shadow shadow;
    private final Support.Cover support;
    private final ReflectedRays.TransformedRays transformed = new ReflectedRays.TransformedRays(MAX_BATCH);
    /** Sunlight on the mirror point, 0 where shaded. Entries of rays that miss are set to 0 later. */
    private final float[] unshadedWatts = new float[MAX_BATCH];

    private final float[] shadowMargin = new float[MAX_BATCH];
    private final float[] x = new float[MAX_BATCH];
    private final float[] y = new float[MAX_BATCH];
    private final float[] distance = new float[MAX_BATCH];
    private final float[] rayParameter = new float[MAX_BATCH];
    private final float[] wallMargin = new float[MAX_BATCH];
    private final int[] outsideMask = new int[MAX_BATCH];
    private final float[] caughtWatts = new float[MAX_BATCH];
    private final float[] absorptance = new float[MAX_BATCH];
    private final float[] crossingWatts = new float[MAX_BATCH];
    private final int[] pending = new int[MAX_BATCH + 1];
    private final Optional<PanelTally> panels;

    /**
     * For one replicate.
     *
     * @param target the pan or disc
     * @param sunInTarget direction to the sun's centre, target frame
     * @param largestSunAngle largest angle of sunlight from that direction, rad
     * @param shares of unshaded light that leave the mirrors
     * @param tally receives the counts
     * @param panels receives them panel by panel, if wanted
     */
    StoredRayCatcher(
            Target target,
            Vec sunInTarget,
            double largestSunAngle,
            MirrorShares shares,
            Tally tally,
            Optional<PanelTally> panels) {
        this.tally = tally;
        this.panels = panels;
        this.shares = shares;
        reflectedShare = shares.common();
        radius = (float) target.radiusMetres();
        double height = target instanceof Pan pan ? pan.heightMetres() : 0;
        isDisc = !(target instanceof Pan);
        body = new Cylinder(target.radiusMetres(), height, isDisc);
        shadow = new Shadow(target, sunInTarget, largestSunAngle);
        support = (target instanceof Pan pan ? pan.support() : Support.NONE).cover();
    }

    /** Adds the light of {@code rays} rays through hub and gaps, and that of it on a mask, W; the rays that met a mirror follow by {@link #add}. */
    public void addGap(long rays, double gapWatts, double coveredWatts) {
        tally.rays += rays;
        tally.gap += gapWatts;
        tally.covered += coveredWatts;
    }

    /**
     * Adds a batch to the tally.
     *
     * @param rays at most {@link #MAX_BATCH}
     * @param pose of their frame in the target's
     */
    public void add(ReflectedRays rays, Pose pose) {
        transformed.transform(rays, pose);
        countMirrors(rays);
        if (tally.zones.isKept()) {
            tally.zones.reflect(rays, shares, unshadedWatts);
        }
        panels.ifPresent(sums -> sums.addMirrors(rays, unshadedWatts, reflectedShare));
        intersectPlane(rays.count());
        if (support.any()) {
            stopAtSupport(rays.count());
        }
        computeWallMargins(rays.count());
        int listed = classify(rays.count());
        addUnderside(rays.count());
        if (tally.hasMaps()) {
            tally.addToMaps(x, y, distance, outsideMask, crossingWatts, reflectedShare, rays.count());
        }
        intersectBody(listed);
        panels.ifPresent(sums -> sums.addCaught(rays, unshadedWatts, reflectedShare));
        if (tally.zones.isKept()) {
            tally.zones.addCaught(rays, unshadedWatts);
        }
    }

    private void countMirrors(ReflectedRays rays) {
        rays.copyWatts(unshadedWatts);
        double shaded = 0;
        if (shadow.isCast()) {
            int candidates = listNearShadow(rays.count());
            for (int k = 0; k < candidates; k++) {
                shaded += shadedWatts(rays, pending[k]);
            }
        }
        if (support.any()) {
            shaded += shadedBySupport(rays);
        }
        tally.incident += rays.incidentWatts();
        tally.shaded += shaded;
        tally.unshaded += rays.incidentWatts() - shaded;
    }

    /** Lists the mirror points that the shadow may cover; returns their number. */
    private int listNearShadow(int n) {
        shadow.margins(transformed.px, transformed.py, transformed.pz, n, shadowMargin);
        int k = 0;
        for (int i = 0; i < n; i++) {
            pending[k] = i;
            k += 1 + negativeMask(shadowMargin[i]);
        }
        return k;
    }

    /** Watts of ray {@code i} if the body shades its mirror point, which then reflects nothing; else 0. */
    private double shadedWatts(ReflectedRays rays, int i) {
        transformed.loadSunDirection(rays, i);
        int face = body.intersect(
                transformed.px[i],
                transformed.py[i],
                transformed.pz[i],
                transformed.sunX,
                transformed.sunY,
                transformed.sunZ);
        if (face == Cylinder.NOTHING) {
            return 0;
        }
        unshadedWatts[i] = 0;
        return rays.watts(i);
    }

    /** Watts of rays whose mirror points lie in the shadow of what the pan stands on; they then reflect nothing. */
    private double shadedBySupport(ReflectedRays rays) {
        double shaded = 0;
        for (int i = 0; i < rays.count(); i++) {
            transformed.loadSunDirection(rays, i);
            boolean stopped = support.stops(
                    transformed.px[i],
                    transformed.py[i],
                    transformed.pz[i],
                    transformed.sunX,
                    transformed.sunY,
                    transformed.sunZ);
            if (stopped) {
                shaded += unshadedWatts[i];
                unshadedWatts[i] = 0;
            }
        }
        return shaded;
    }

    private void stopAtSupport(int n) {
        for (int i = 0; i < n; i++) {
            if (transformed.pz[i] < 0 && transformed.dz[i] > 0 && support.covers(x[i], y[i])) {
                tally.addStopped(unshadedWatts[i] * reflectedShare);
                unshadedWatts[i] = 0;
            }
        }
    }

    /** Where the lines of the rays cross the target's plane; far away for rays parallel to it. */
    private void intersectPlane(int n) {
        float[] pz = transformed.pz;
        float[] dz = transformed.dz;
        for (int i = 0; i < n; i++) {
            rayParameter[i] = -pz[i] * dz[i] / (dz[i] * dz[i] + LEAST_DZ2);
        }
        pointOnRay(transformed.px, transformed.dx, x, n);
        pointOnRay(transformed.py, transformed.dy, y, n);
        for (int i = 0; i < n; i++) {
            distance[i] = (float) Math.sqrt(x[i] * x[i] + y[i] * y[i]);
        }
    }

    private void pointOnRay(float[] from, float[] direction, float[] to, int n) {
        for (int i = 0; i < n; i++) {
            to[i] = from[i] + rayParameter[i] * direction[i];
        }
    }

    /** All bits set where {@code a} is below zero, else none: a comparison without a branch. */
    private static int negativeMask(float a) {
        return Float.floatToRawIntBits(a) >> 31;
    }

    private static float masked(float a, int mask) {
        return Float.intBitsToFloat(Float.floatToRawIntBits(a) & mask);
    }

    /** For each ray: below zero if it may meet the wall after it has crossed the plane outside the underside. */
    private void computeWallMargins(int n) {
        float[] dx = transformed.dx;
        float[] dy = transformed.dy;
        float radius2 = radius * radius;
        for (int i = 0; i < n; i++) {
            float inward = x[i] * dx[i] + y[i] * dy[i];
            float across2 = inward * inward - (dx[i] * dx[i] + dy[i] * dy[i]) * (distance[i] * distance[i] - radius2);
            wallMargin[i] = isDisc ? 1 : Math.max(inward, -across2);
        }
    }

    /**
     * Separates rays that hit the underside, rays that miss, and rays that need the general test. Lists the latter and
     * returns their number.
     */
    private int classify(int n) {
        float[] pz = transformed.pz;
        float[] dz = transformed.dz;
        int k = 0;
        double missed = 0;
        for (int i = 0; i < n; i++) {
            int crosses = negativeMask(pz[i]) & negativeMask(0 - dz[i]);
            outsideMask[i] = negativeMask(radius - distance[i]);
            int caught = crosses & ~outsideMask[i];
            int past = crosses & outsideMask[i] & ~negativeMask(wallMargin[i]);
            crossingWatts[i] = masked(unshadedWatts[i], crosses);
            caughtWatts[i] = masked(unshadedWatts[i], caught);
            pending[k] = i;
            k += 1 + (caught | past);
            missed += masked(unshadedWatts[i], past);
            unshadedWatts[i] = masked(unshadedWatts[i], ~past);
        }
        tally.missed += missed * reflectedShare;
        return k;
    }

    private void addUnderside(int n) {
        double absorbable = 0;
        double underside = 0;
        double mx = 0;
        double my = 0;
        double mxx = 0;
        double mxy = 0;
        double myy = 0;
        GrazingAbsorptance.fill(transformed.dz, n, absorptance);
        for (int i = 0; i < n; i++) {
            double w = caughtWatts[i];
            underside += w;
            absorbable += w * absorptance[i];
            double wx = w * x[i];
            double wy = w * y[i];
            mx += wx;
            my += wy;
            mxx += wx * x[i];
            mxy += wx * y[i];
            myy += wy * y[i];
        }
        tally.underside += underside * reflectedShare;
        tally.undersideAbsorbable += absorbable * reflectedShare;
        tally.moments[0] += mx * reflectedShare;
        tally.moments[1] += my * reflectedShare;
        tally.moments[2] += mxx * reflectedShare;
        tally.moments[3] += mxy * reflectedShare;
        tally.moments[4] += myy * reflectedShare;
    }

    private void intersectBody(int listed) {
        for (int k = 0; k < listed; k++) {
            int i = pending[k];
            int face = isDisc ? Cylinder.NOTHING : intersect(i);
            tally.addBodyHit(
                    body,
                    face,
                    transformed.dx[i],
                    transformed.dy[i],
                    transformed.dz[i],
                    1,
                    unshadedWatts[i] * reflectedShare);
            if (face == Cylinder.NOTHING) {
                unshadedWatts[i] = 0;
            }
        }
    }

    private int intersect(int i) {
        return body.intersect(
                transformed.px[i],
                transformed.py[i],
                transformed.pz[i],
                transformed.dx[i],
                transformed.dy[i],
                transformed.dz[i]);
    }
}
