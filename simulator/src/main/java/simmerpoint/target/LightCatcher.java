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

/**
 * Intersects traced batches with one target and adds the result to a {@link Tally}: shading of the mirrors, then the
 * reflected rays. One instance per thread and replicate.
 *
 * <p>Stratified sampling of the mirror error: each ray is followed twice, once with an error sampled among those that
 * bring it into the disc, once among all others. Each sample carries the probability of its stratum as weight. Both are
 * intersected exactly, so the estimate is unbiased. Hit or miss becomes a smooth function, which quasi-random points need
 * for fast convergence.
 */
public final class LightCatcher {
    private static final double[] ZERO_ONE = {0, 1};

    private final Tally tally;
    private final Cylinder body;
    private final double radius;
    private final boolean isDisc;
    private final DiscHitProbability hitProbability;
    private final PlaneIntersections inside;
    private final PlaneIntersections outside;
    private final double[] reflectedWatts;
    private final Blocking.Test blockingTest;
    private final boolean blockingPossible;
    private final boolean errorFree;
    private final MirrorShares shares;
    private final Shadow shadow;
    private final Support.Cover support;
    private final Optional<PanelTally> panels;
    private final boolean caughtByRay;
    private final double[] caughtWatts;

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
        caughtByRay = panels.isPresent() || tally.zones.isKept();
        caughtWatts = new double[caughtByRay ? batch : 0];
        this.shares = shares;
        radius = target.radiusMetres();
        double height = target instanceof Pan pan ? pan.heightMetres() : 0;
        isDisc = !(target instanceof Pan);
        body = new Cylinder(radius, height, isDisc);
        shadow = new Shadow(target, sunInTarget, largestSunAngle);
        support = (target instanceof Pan pan ? pan.support() : Support.NONE).cover();
        hitProbability = new DiscHitProbability(batch, radius);
        inside = new PlaneIntersections(batch);
        outside = new PlaneIntersections(batch);
        reflectedWatts = new double[batch];
        blockingPossible = caster.blocking().possible();
        blockingTest = caster.blocking().test();
        errorFree = caster.errorFree();
    }

    /** Adds a batch to the tally. */
    public void catchLight(LightBatch light) {
        countMirrors(light);
        if (errorFree) {
            Arrays.fill(outside.weight, 1);
        } else {
            hitProbability.compute(light);
            sampleInside(light);
            sampleOutside(light);
            inside.compute(light, false);
            count(light, inside);
        }
        outside.compute(light, errorFree);
        count(light, outside);
        tally.rays += light.capacity;
        if (caughtByRay) {
            panels.ifPresent(sums -> sums.add(light, reflectedWatts, caughtWatts));
            tally.zones.addCaught(light, caughtWatts);
            Arrays.fill(caughtWatts, 0);
        }
    }

    /** Counts the light up to its reflection; fills {@link #reflectedWatts}. */
    private void countMirrors(LightBatch light) {
        double gap = 0;
        double covered = 0;
        double incident = 0;
        double shaded = 0;
        double unshaded = 0;
        double reflectedShare = shares.common();
        for (int i = 0; i < light.capacity; i++) {
            double watts = light.watts[i];
            reflectedWatts[i] = 0;
            if (light.panel[i] < 0) {
                gap += watts;
                covered += light.panel[i] == MirrorPoints.COVERED ? watts : 0;
                continue;
            }
            incident += watts;
            if ((shadow.isCast() && mayBeShaded(light, i) && isShaded(light, i)) || supportShades(light, i)) {
                shaded += watts;
                continue;
            }
            unshaded += watts;
            reflectedWatts[i] = watts * reflectedShare;
        }
        tally.gap += gap;
        tally.covered += covered;
        tally.incident += incident;
        tally.shaded += shaded;
        tally.unshaded += unshaded;
        if (tally.zones.isKept()) {
            tally.zones.reflect(light, shares, reflectedWatts);
        }
    }

    private boolean mayBeShaded(LightBatch light, int i) {
        return shadow.mayCover(light.px[i], light.py[i], light.pz[i]);
    }

    private boolean isShaded(LightBatch light, int i) {
        return body.intersect(light.px[i], light.py[i], light.pz[i], light.sx[i], light.sy[i], light.sz[i])
                != Cylinder.NOTHING;
    }

    private boolean supportShades(LightBatch light, int i) {
        return support.any()
                && support.stops(light.px[i], light.py[i], light.pz[i], light.sx[i], light.sy[i], light.sz[i]);
    }

    /** 0 if a is below b, else 1. Branch-free, since the branch would be mispredicted half the time. */
    private static int notBelow(double a, double b) {
        return 1 - (int) (Double.doubleToRawLongBits(a - b) >>> 63);
    }

    /** Samples one error per ray among those that bring it into the disc. */
    private void sampleInside(LightBatch light) {
        int n = light.capacity;
        for (int i = 0; i < n; i++) {
            double first = hitProbability.within[i];
            double both = first + hitProbability.within[n + i];
            double v = light.errorSample[i] * both;
            int line = notBelow(v, first);
            int entry = i + line * n;
            inside.entry[i] = entry;
            inside.quantile[i] = hitProbability.below[entry] + v - first * ZERO_ONE[line];
            inside.weight[i] = 0.5 * both;
        }
    }

    /** Samples one error per ray among all others. */
    private void sampleOutside(LightBatch light) {
        int n = light.capacity;
        for (int i = 0; i < n; i++) {
            double first = 1 - hitProbability.within[i];
            double both = first + 1 - hitProbability.within[n + i];
            double v = light.errorSample[i] * both;
            int line = notBelow(v, first);
            int entry = i + line * n;
            double y = v - first * ZERO_ONE[line];
            int above = notBelow(y, hitProbability.below[entry]);
            outside.entry[i] = entry;
            outside.quantile[i] = y + hitProbability.within[entry] * ZERO_ONE[above];
            outside.weight[i] = 0.5 * both;
        }
    }

    /** Adds the rays of one stratum to the tally. */
    private void count(LightBatch light, PlaneIntersections plane) {
        for (int i = 0; i < light.capacity; i++) {
            double watts = reflectedWatts[i] * plane.weight[i];
            if (watts == 0) {
                continue;
            }
            boolean crosses = plane.rayParameter[i] > 0 && light.pz[i] < 0;
            if (crosses && support.any() && support.covers(plane.x[i], plane.y[i])) {
                tally.addStopped(watts);
                continue;
            }
            if (crosses && !blockingPossible && (isDisc || plane.radius[i] <= radius)) {
                boolean caught = plane.radius[i] <= radius;
                addCrossing(plane, i, caught, watts);
                tally.missed += caught ? 0 : watts;
            } else {
                intersectBody(light, i, plane, watts);
            }
        }
    }

    private void addCrossing(PlaneIntersections plane, int i, boolean caught, double watts) {
        tally.addCrossing(plane.x[i], plane.y[i], plane.radius[i], caught, watts);
        if (caught) {
            tally.undersideAbsorbable += watts * plane.absorptance[i];
            addCaught(i, watts);
        }
    }

    private void addCaught(int i, double watts) {
        if (caughtByRay) {
            caughtWatts[i] += watts;
        }
    }

    /** The general case: wall, lid, blocking panels. */
    private void intersectBody(LightBatch light, int i, PlaneIntersections plane, double watts) {
        double dx = plane.directions.dx[i];
        double dy = plane.directions.dy[i];
        double dz = plane.directions.dz[i];
        int face = body.intersect(light.px[i], light.py[i], light.pz[i], dx, dy, dz);
        if (blockingPossible
                && (body.crossesBase || face != Cylinder.NOTHING)
                && blockingTest.blocks(light, i, dx, dy, dz, body.rayParameter)) {
            tally.missed += watts;
            return;
        }
        if (body.crossesBase) {
            addCrossing(plane, i, face == Cylinder.UNDERSIDE, watts);
        }
        tally.addBodyHit(body, face, dx, dy, dz, plane.inverseLength[i], watts);
        if (face == Cylinder.WALL || face == Cylinder.LID) {
            addCaught(i, watts);
        }
    }
}
