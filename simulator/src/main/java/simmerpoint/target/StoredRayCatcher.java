package simmerpoint.target;

import java.util.Optional;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;
import simmerpoint.tracing.ReflectedRays;

/**
 * Catches stored rays with a target that may stand elsewhere than when they were cast: its shadow is judged anew, each
 * ray lands once. Quicker than {@link LightCatcher} and noisier. For one thread and one replicate, and for panels that do
 * not hide each other.
 *
 * <p>What few rays need (shadow near the pan, wall and lid) is put on lists without a branch that would be guessed wrong,
 * and worked off afterwards (measured: two thirds of the time).
 */
public final class StoredRayCatcher {
    /** Rays of one batch at most: what is worked out of them stays in the nearest memory. */
    public static final int MOST = 512;

    /** Keeps the square of a direction's height off zero; nothing beside any other. */
    private static final float NOT_ZERO = 1e-30f;

    private final Tally tally;
    private final Cylinder body;
    private final float radius;
    private final boolean bare;
    private final double reflectedShare;
    private final Shadow shadow;
    private final ReflectedRays.TransformedRays seen = new ReflectedRays.TransformedRays(MOST);
    /** Sunlight on unshaded mirror points; what of it leaves them is told to the tally. */
    private final float[] lit = new float[MOST];

    private final float[] nearness = new float[MOST];
    private final float[] x = new float[MOST];
    private final float[] y = new float[MOST];
    private final float[] off = new float[MOST];
    private final float[] reach = new float[MOST];
    private final float[] toWall = new float[MOST];
    private final int[] beside = new int[MOST];
    private final float[] landed = new float[MOST];
    private final float[] through = new float[MOST];
    private final int[] list = new int[MOST + 1];
    private final Optional<PanelTally> panels;

    /**
     * Catches for one replicate.
     *
     * @param target the pan or disc
     * @param sunInTarget direction to the sun's centre, target frame
     * @param largestSunAngle no sunlight comes from farther off that direction, rad
     * @param reflectedShare share of unshaded light that leaves the mirrors as a beam
     * @param tally receives the counts
     * @param panels receives them panel by panel, if wanted
     */
    StoredRayCatcher(
            Target target,
            Vec sunInTarget,
            double largestSunAngle,
            double reflectedShare,
            Tally tally,
            Optional<PanelTally> panels) {
        this.tally = tally;
        this.panels = panels;
        this.reflectedShare = reflectedShare;
        radius = (float) target.radiusMetres();
        double height = target instanceof Pan pan ? pan.heightMetres() : 0;
        bare = !(target instanceof Pan);
        body = new Cylinder(target.radiusMetres(), height, bare);
        shadow = new Shadow(target, sunInTarget, largestSunAngle);
    }

    /** Counts light through hub and gaps, W, of {@code rays} rays in all; their reflected ones come by {@link #take}. */
    public void begin(long rays, double gapWatts) {
        tally.rays += rays;
        tally.gap += gapWatts;
    }

    /**
     * Catches a batch.
     *
     * @param rays at most {@link #MOST}
     * @param pose of their frame in the target's
     */
    public void take(ReflectedRays rays, Pose pose) {
        seen.from(rays, pose);
        countMirrors(rays);
        panels.ifPresent(sums -> sums.countMirrors(rays, lit, reflectedShare));
        land(rays.count());
        turnToWall(rays.count());
        int listed = sort(rays.count());
        countLanded(rays.count());
        if (tally.hasMaps()) {
            tally.map(x, y, off, beside, through, reflectedShare, rays.count());
        }
        meetBody(listed);
        panels.ifPresent(sums -> sums.countCaught(rays, lit, reflectedShare));
    }

    private void countMirrors(ReflectedRays rays) {
        rays.copyWatts(lit);
        double shaded = 0;
        if (shadow.isCast()) {
            int candidates = nearShadow(rays.count());
            for (int k = 0; k < candidates; k++) {
                shaded += shade(rays, list[k]);
            }
        }
        tally.incident += rays.incident();
        tally.shaded += shaded;
        tally.lit += rays.incident() - shaded;
    }

    /** Lists the mirror points that the shadow may cover. */
    private int nearShadow(int n) {
        shadow.nearness(seen.px, seen.py, seen.pz, n, nearness);
        int k = 0;
        for (int i = 0; i < n; i++) {
            list[k] = i;
            k += 1 + below(nearness[i]);
        }
        return k;
    }

    /** Watts of ray {@code i} if the body keeps the sun off its mirror point, which then reflects nothing; else 0. */
    private double shade(ReflectedRays rays, int i) {
        seen.lookAtSun(rays, i);
        int met = body.meet(seen.px[i], seen.py[i], seen.pz[i], seen.sunX, seen.sunY, seen.sunZ);
        if (met == Cylinder.NOTHING) {
            return 0;
        }
        lit[i] = 0;
        return rays.watts(i);
    }

    /** Where the lines of the rays cross the target's plane; far away, but somewhere, for those that run along it. */
    private void land(int n) {
        float[] pz = seen.pz;
        float[] dz = seen.dz;
        for (int i = 0; i < n; i++) {
            reach[i] = -pz[i] * dz[i] / (dz[i] * dz[i] + NOT_ZERO);
        }
        along(seen.px, seen.dx, x, n);
        along(seen.py, seen.dy, y, n);
        for (int i = 0; i < n; i++) {
            off[i] = (float) Math.sqrt(x[i] * x[i] + y[i] * y[i]);
        }
    }

    private void along(float[] from, float[] direction, float[] to, int n) {
        for (int i = 0; i < n; i++) {
            to[i] = from[i] + reach[i] * direction[i];
        }
    }

    /** All bits set where {@code a} is below zero, else none: a comparison without a branch to be guessed. */
    private static int below(float a) {
        return Float.floatToRawIntBits(a) >> 31;
    }

    private static float masked(float a, int mask) {
        return Float.intBitsToFloat(Float.floatToRawIntBits(a) & mask);
    }

    /** For each ray: below zero if it may still meet the wall after it has crossed the plane beside the underside. */
    private void turnToWall(int n) {
        float[] dx = seen.dx;
        float[] dy = seen.dy;
        float radius2 = radius * radius;
        for (int i = 0; i < n; i++) {
            float inward = x[i] * dx[i] + y[i] * dy[i];
            float across2 = inward * inward - (dx[i] * dx[i] + dy[i] * dy[i]) * (off[i] * off[i] - radius2);
            toWall[i] = bare ? 1 : Math.max(inward, -across2);
        }
    }

    /** Sorts out what crosses the plane from below, what lands there, what goes past, and lists what may meet more. */
    private int sort(int n) {
        float[] pz = seen.pz;
        float[] dz = seen.dz;
        int k = 0;
        double missed = 0;
        for (int i = 0; i < n; i++) {
            int crosses = below(pz[i]) & below(0 - dz[i]);
            beside[i] = below(radius - off[i]);
            int caught = crosses & ~beside[i];
            int past = crosses & beside[i] & ~below(toWall[i]);
            through[i] = masked(lit[i], crosses);
            landed[i] = masked(lit[i], caught);
            list[k] = i;
            k += 1 + (caught | past);
            missed += masked(lit[i], past);
            lit[i] = masked(lit[i], ~past);
        }
        tally.missed += missed * reflectedShare;
        return k;
    }

    private void countLanded(int n) {
        double slant = 0;
        double underside = 0;
        double mx = 0;
        double my = 0;
        double mxx = 0;
        double mxy = 0;
        double myy = 0;
        float[] dz = seen.dz;
        for (int i = 0; i < n; i++) {
            double w = landed[i];
            underside += w;
            slant += w * dz[i];
            double wx = w * x[i];
            double wy = w * y[i];
            mx += wx;
            my += wy;
            mxx += wx * x[i];
            mxy += wx * y[i];
            myy += wy * y[i];
        }
        tally.underside += underside * reflectedShare;
        tally.undersideSlant += slant * reflectedShare;
        tally.moments[0] += mx * reflectedShare;
        tally.moments[1] += my * reflectedShare;
        tally.moments[2] += mxx * reflectedShare;
        tally.moments[3] += mxy * reflectedShare;
        tally.moments[4] += myy * reflectedShare;
    }

    private void meetBody(int listed) {
        for (int k = 0; k < listed; k++) {
            int i = list[k];
            int met = bare ? Cylinder.NOTHING : meet(i);
            tally.hit(body, met, seen.dx[i], seen.dy[i], seen.dz[i], 1, lit[i] * reflectedShare);
            if (met == Cylinder.NOTHING) {
                lit[i] = 0;
            }
        }
    }

    private int meet(int i) {
        return body.meet(seen.px[i], seen.py[i], seen.pz[i], seen.dx[i], seen.dy[i], seen.dz[i]);
    }
}
