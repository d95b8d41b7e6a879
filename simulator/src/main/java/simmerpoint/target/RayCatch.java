package simmerpoint.target;

import java.util.Optional;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;
import simmerpoint.tracing.LightCaster;
import simmerpoint.tracing.ReflectedRays;

/**
 * Catches stored rays with a target that may stand elsewhere than when they were cast: its shadow is judged anew, each
 * ray lands once. Quicker than {@link TargetCatch} and noisier. For one thread and one replicate, and for panels that do
 * not hide each other.
 *
 * <p>What few rays need (shadow near the pan, wall and lid) is put on lists without a branch that would be guessed wrong,
 * and worked off afterwards (measured: two thirds of the time).
 */
public final class RayCatch {
    private final Tally tally;
    private final Cylinder body;
    private final double radius;
    private final boolean bare;
    private final double reflectedShare;
    private final Shadow shadow;
    private final ReflectedRays.Seen seen = new ReflectedRays.Seen(LightCaster.BATCH);
    private final double[] lit = new double[LightCaster.BATCH];
    private final double[] x = new double[LightCaster.BATCH];
    private final double[] y = new double[LightCaster.BATCH];
    private final double[] off = new double[LightCaster.BATCH];
    private final int[] list = new int[LightCaster.BATCH + 1];
    private final Optional<PanelSums> panels;

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
    RayCatch(
            Target target,
            Vec sunInTarget,
            double largestSunAngle,
            double reflectedShare,
            Tally tally,
            Optional<PanelSums> panels) {
        this.tally = tally;
        this.panels = panels;
        this.reflectedShare = reflectedShare;
        radius = target.radiusMetres();
        double height = target instanceof Pan pan ? pan.heightMetres() : 0;
        bare = !(target instanceof Pan);
        body = new Cylinder(radius, height, bare);
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
     * @param rays at most as many as a caster's batch
     * @param pose of their frame in the target's
     */
    public void take(ReflectedRays rays, Pose pose) {
        seen.turn(rays, pose);
        countMirrors(rays, pose);
        panels.ifPresent(sums -> sums.countMirrors(rays, lit));
        land(rays.count());
        meetBody(cross(rays.count()));
        panels.ifPresent(sums -> sums.countCaught(rays, lit));
    }

    private void countMirrors(ReflectedRays rays, Pose pose) {
        double incident = 0;
        double shaded = 0;
        for (int i = 0; i < rays.count(); i++) {
            double watts = rays.watts(i);
            incident += watts;
            lit[i] = watts * reflectedShare;
        }
        if (shadow.isCast()) {
            int candidates = nearShadow(rays.count());
            for (int k = 0; k < candidates; k++) {
                shaded += shade(rays, pose, list[k]);
            }
        }
        tally.incident += incident;
        tally.shaded += shaded;
        tally.lit += incident - shaded;
    }

    /** Lists the mirror points that the shadow may cover. */
    private int nearShadow(int n) {
        int k = 0;
        for (int i = 0; i < n; i++) {
            list[k] = i;
            k += shadow.mayCover(seen.px[i], seen.py[i], seen.pz[i]) ? 1 : 0;
        }
        return k;
    }

    /** Watts of ray {@code i} if the body keeps the sun off its mirror point, which then reflects nothing; else 0. */
    private double shade(ReflectedRays rays, Pose pose, int i) {
        Vec sun = pose.rotation().apply(rays.towardsSun(i));
        if (body.meet(seen.px[i], seen.py[i], seen.pz[i], sun.x(), sun.y(), sun.z()) == Cylinder.NOTHING) {
            return 0;
        }
        lit[i] = 0;
        return rays.watts(i);
    }

    /** Where the lines of the rays cross the target's plane. */
    private void land(int n) {
        for (int i = 0; i < n; i++) {
            x[i] = seen.px[i] - seen.pz[i] / seen.dz[i] * seen.dx[i];
        }
        for (int i = 0; i < n; i++) {
            y[i] = seen.py[i] - seen.pz[i] / seen.dz[i] * seen.dy[i];
        }
        for (int i = 0; i < n; i++) {
            off[i] = Math.sqrt(x[i] * x[i] + y[i] * y[i]);
        }
    }

    /** Counts what crosses the plane from below, and lists all rays that the underside does not catch. */
    private int cross(int n) {
        int k = 0;
        double slant = 0;
        double underside = 0;
        double mx = 0;
        double my = 0;
        double mxx = 0;
        double mxy = 0;
        double myy = 0;
        for (int i = 0; i < n; i++) {
            boolean crosses = seen.dz[i] > 0 && seen.pz[i] < 0;
            boolean caught = crosses && off[i] <= radius;
            list[k] = i;
            k += caught ? 0 : 1;
            double w = caught ? lit[i] : 0;
            underside += w;
            slant += w * seen.dz[i];
            double wx = w * x[i];
            double wy = w * y[i];
            mx += wx;
            my += wy;
            mxx += wx * x[i];
            mxy += wx * y[i];
            myy += wy * y[i];
            if (crosses) {
                tally.map(x[i], y[i], off[i], caught, lit[i]);
            }
        }
        tally.underside += underside;
        tally.undersideSlant += slant;
        tally.moments[0] += mx;
        tally.moments[1] += my;
        tally.moments[2] += mxx;
        tally.moments[3] += mxy;
        tally.moments[4] += myy;
        return k;
    }

    private void meetBody(int listed) {
        for (int k = 0; k < listed; k++) {
            int i = list[k];
            int met = bare ? Cylinder.NOTHING : meet(i);
            tally.hit(body, met, seen.dx[i], seen.dy[i], seen.dz[i], 1, lit[i]);
            if (met == Cylinder.NOTHING) {
                lit[i] = 0;
            }
        }
    }

    private int meet(int i) {
        return body.meet(seen.px[i], seen.py[i], seen.pz[i], seen.dx[i], seen.dy[i], seen.dz[i]);
    }
}
