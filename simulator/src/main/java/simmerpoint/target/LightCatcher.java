package simmerpoint.target;

import java.util.Arrays;
import java.util.Optional;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.built.MirrorShares;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.pan.Target;
import simmerpoint.tracing.Blocking;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.LightCaster;
import simmerpoint.tracing.ReflectedDirections;

/**
 * Intersects traced batches with one target and adds the result to a {@link Tally}: shading of the mirrors, then the
 * reflected rays. One instance per thread.
 *
 * <p>Stratified sampling of the mirror error: each ray is followed once with an error of the heavier of two strata, those that
 * bring it into the disc and all others, and where it matters once more with an error of the lighter one ({@link
 * ErrorStrata}). Each sample carries the probability of its stratum as weight. Both are intersected exactly, so the estimate is
 * unbiased. Hit or miss becomes a smooth function, which quasi-random points need for fast convergence.
 */
public final class LightCatcher {
    private Tally tally;
    private final Cylinder body;
    private final RayIntersections intersections;
    private final ErrorStrata strata;
    private final ReflectedDirections heavier;
    private final ReflectedDirections lighter;
    private final LightBatch listed;
    private final float[] unshadedWatts;
    private final float[] heavierWatts;
    private final float[] lighterWatts;
    private final float[] shadowMargin;
    private final int[] nearShadow;
    private final Blocking.Test blockingTest;
    private final boolean blockingPossible;
    private final boolean errorFree;
    private final MirrorShares shares;
    private final double reflectedShare;
    private final Shadow shadow;
    private final Support.Cover support;
    private final Optional<PanelTally> panels;
    /** Whether what is caught of this batch is kept ray by ray. */
    private boolean caughtByRay;

    private final float[] caughtWatts;

    /**
     * For one replicate.
     *
     * @param target the pan or disc
     * @param sunInTarget direction to the sun's centre, target frame
     * @param largestSunAngle largest angle of sunlight from that direction, rad
     * @param shares of unshaded light that leave the mirrors
     * @param caster where the light comes from
     * @param batch rays per batch
     * @param tally receives the counts
     * @param panels receives them panel by panel, if wanted
     */
    LightCatcher(
            Target target,
            Vec sunInTarget,
            double largestSunAngle,
            MirrorShares shares,
            LightCaster caster,
            int batch,
            Tally tally,
            Optional<PanelTally> panels) {
        this.tally = tally;
        this.panels = panels;
        caughtWatts = new float[panels.isPresent() || tally.zones.isKept() ? batch : 0];
        this.shares = shares;
        reflectedShare = shares.common();
        body = Cylinder.of(target);
        intersections = new RayIntersections(target, body, tally, batch);
        shadow = new Shadow(target, sunInTarget, largestSunAngle);
        support = (target instanceof Pan pan ? pan.support() : Support.NONE).cover();
        strata = new ErrorStrata(batch, target.radiusMetres());
        heavier = new ReflectedDirections(batch);
        lighter = new ReflectedDirections(batch);
        listed = new LightBatch(batch);
        unshadedWatts = new float[batch];
        heavierWatts = new float[batch];
        lighterWatts = new float[batch];
        shadowMargin = new float[batch];
        nearShadow = new int[batch + 1];
        blockingPossible = caster.blocking().possible();
        blockingTest = caster.blocking().test();
        errorFree = caster.errorFree();
    }

    /** Adds to another tally of the same target from now on. */
    void addTo(Tally other) {
        tally = other;
        intersections.addTo(other);
    }

    /** Adds a batch to the tally. */
    public void catchLight(LightBatch light) {
        boolean ofSeveral = tally.zones.isKept() && light.zone < 0;
        caughtByRay = panels.isPresent() || ofSeveral;
        double incident = tally.incident;
        double unshaded = tally.unshaded;
        double caught = tally.caught();
        countMirrors(light);
        removeShaded(light);
        if (ofSeveral) {
            tally.zones.reflect(light, shares, unshadedWatts);
        } else if (tally.zones.isKept()) {
            scale(unshadedWatts, (float) shares.reflected(light.zone), light.capacity);
        }
        if (errorFree) {
            System.arraycopy(unshadedWatts, 0, heavierWatts, 0, light.capacity);
        } else {
            strata.place(light);
            strata.split(unshadedWatts, light.capacity, heavierWatts, lighterWatts);
            catchLighter(light);
            strata.sampleHeavier(light, heavier);
        }
        catchHeavier(light);
        tally.rays += light.capacity;
        if (caughtByRay) {
            panels.ifPresent(sums -> sums.add(light, unshadedWatts, caughtWatts, reflectedShare));
            if (ofSeveral) {
                tally.zones.addCaught(light, caughtWatts);
            }
            Arrays.fill(caughtWatts, 0);
        }
        if (tally.zones.isKept() && !ofSeveral) {
            tally.zones.add(light.zone, tally.incident - incident, tally.unshaded - unshaded, tally.caught() - caught);
        }
    }

    private static void scale(float[] watts, float share, int n) {
        for (int i = 0; i < n; i++) {
            watts[i] *= share;
        }
    }

    private void catchHeavier(LightBatch light) {
        int n = light.capacity;
        heavier.reflect(light, n);
        if (blockingPossible) {
            removeBlocked(light, heavier, heavierWatts, n, false);
        }
        intersections.add(rays(light, heavier), heavierWatts, reflectedShare * light.beam, n);
        if (caughtByRay) {
            for (int i = 0; i < n; i++) {
                caughtWatts[i] += heavierWatts[i];
            }
        }
    }

    private void catchLighter(LightBatch light) {
        int n = strata.listLighter(lighterWatts, light.capacity);
        listed.copyListed(light, strata.lighter, n);
        LightBatch.copyListed(lighterWatts, strata.lighter, n, lighterWatts);
        strata.sampleLighter(light, listed.errorSample, n, lighter);
        lighter.reflect(listed, n);
        if (blockingPossible) {
            removeBlocked(light, lighter, lighterWatts, n, true);
        }
        intersections.add(rays(listed, lighter), lighterWatts, reflectedShare * light.beam, n);
        if (caughtByRay) {
            for (int k = 0; k < n; k++) {
                caughtWatts[strata.lighter[k]] += lighterWatts[k];
            }
        }
    }

    private static RayIntersections.Rays rays(LightBatch from, ReflectedDirections along) {
        return new RayIntersections.Rays(from.px, from.py, from.pz, along.dx, along.dy, along.dz);
    }

    /** Counts the light up to the mirrors; fills {@link #unshadedWatts} as if nothing shaded them. */
    private void countMirrors(LightBatch light) {
        double gap = 0;
        double incident = 0;
        for (int i = 0; i < light.capacity; i++) {
            int inGap = light.panel[i] >> 31;
            float onMirror = RayIntersections.masked(light.watts[i], ~inGap);
            gap += light.watts[i] - onMirror;
            incident += onMirror;
            unshadedWatts[i] = onMirror;
            if (light.panel[i] == MirrorPoints.COVERED) {
                tally.covered += light.watts[i] * light.beam;
            }
        }
        tally.gap += gap * light.beam;
        tally.incident += incident * light.beam;
        tally.unshaded += incident * light.beam;
    }

    /** Takes the light off mirrors that the target or what it stands on shades. */
    private void removeShaded(LightBatch light) {
        if (shadow.isCast()) {
            int n = shadow.list(light.px, light.py, light.pz, light.capacity, shadowMargin, nearShadow);
            for (int k = 0; k < n; k++) {
                int i = nearShadow[k];
                if (isShaded(light, i)) {
                    removeShaded(light, i);
                }
            }
        }
        if (support.any()) {
            for (int i = 0; i < light.capacity; i++) {
                if (support.stops(light.px[i], light.py[i], light.pz[i], light.sx[i], light.sy[i], light.sz[i])) {
                    removeShaded(light, i);
                }
            }
        }
    }

    private boolean isShaded(LightBatch light, int i) {
        return body.intersect(light.px[i], light.py[i], light.pz[i], light.sx[i], light.sy[i], light.sz[i])
                != Cylinder.NOTHING;
    }

    private void removeShaded(LightBatch light, int i) {
        double watts = unshadedWatts[i] * light.beam;
        tally.shaded += watts;
        tally.unshaded -= watts;
        unshadedWatts[i] = 0;
    }

    /** Takes the light off rays that another panel stops before they meet the target or its plane. */
    private void removeBlocked(LightBatch light, ReflectedDirections along, float[] watts, int n, boolean isListed) {
        for (int k = 0; k < n; k++) {
            int i = isListed ? strata.lighter[k] : k;
            double dx = along.dx[k];
            double dy = along.dy[k];
            double dz = along.dz[k];
            if (watts[k] == 0) {
                continue;
            }
            int face = body.intersect(light.px[i], light.py[i], light.pz[i], dx, dy, dz);
            if ((body.crossesBase || face != Cylinder.NOTHING)
                    && blockingTest.blocks(light, i, dx, dy, dz, body.rayParameter)) {
                tally.missed += watts[k] * reflectedShare * light.beam;
                watts[k] = 0;
            }
        }
    }
}
