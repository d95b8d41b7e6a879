package simmerpoint.target;

import java.util.Optional;
import simmerpoint.dish.built.MirrorShares;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.pan.Target;
import simmerpoint.tracing.ReflectedRays;

/**
 * Intersects stored rays with a target that may stand elsewhere than when they were cast, and adds the result to a {@link
 * Tally}. Shading is computed anew; each ray is intersected once. Faster than {@link LightCatcher} and noisier. One instance
 * per thread and replicate; only for panels that do not block each other.
 */
public final class StoredRayCatcher {
    /** Largest batch: its intermediate results fit into the first-level cache. */
    public static final int MAX_BATCH = 512;

    private final Tally tally;
    private final Cylinder body;
    private final MirrorShares shares;
    private final double reflectedShare;
    private final Shadow shadow;
    private final Support.Cover support;
    private final ReflectedRays.TransformedRays transformed = new ReflectedRays.TransformedRays(MAX_BATCH);
    /** Sunlight on the mirror point, 0 where shaded. Entries of rays that miss are set to 0 later. */
    private final float[] unshadedWatts = new float[MAX_BATCH];

    private final float[] shadowMargin = new float[MAX_BATCH];
    private final int[] pending = new int[MAX_BATCH + 1];
    private final RayIntersections intersections;
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
        body = Cylinder.of(target);
        intersections = new RayIntersections(target, body, tally, MAX_BATCH);
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
        intersections.add(
                new RayIntersections.Rays(
                        transformed.px, transformed.py, transformed.pz, transformed.dx, transformed.dy, transformed.dz),
                unshadedWatts,
                reflectedShare,
                rays.count());
        panels.ifPresent(sums -> sums.addCaught(rays, unshadedWatts, reflectedShare));
        if (tally.zones.isKept()) {
            tally.zones.addCaught(rays, unshadedWatts);
        }
    }

    private void countMirrors(ReflectedRays rays) {
        rays.copyWatts(unshadedWatts);
        double shaded = 0;
        if (shadow.isCast()) {
            int candidates =
                    shadow.list(transformed.px, transformed.py, transformed.pz, rays.count(), shadowMargin, pending);
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
}
