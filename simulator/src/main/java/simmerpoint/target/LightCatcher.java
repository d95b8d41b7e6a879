package simmerpoint.target;

import java.util.Arrays;
import java.util.Optional;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;
import simmerpoint.tracing.Blocking;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.LightCaster;

/**
 * Catches light with one target: takes off its shadow, lands the rays and counts all of it into a {@link Tally}. For one
 * thread and one replicate.
 *
 * <p>Each ray lands twice: once with an error drawn among those that bring it into the disc, once among all others, each
 * with the watts that its share of the errors carries. Both landings are judged exactly, so nothing is biased; a step
 * (hit or miss) has become a smooth share, which is what quasi-random points need.
 */
public final class LightCatcher {
    private static final double[] ZERO_ONE = {0, 1};

    private final Tally tally;
    private final Cylinder body;
    private final double radius;
    private final boolean bare;
    private final DiscHitProbability share;
    private final PlaneIntersections inside;
    private final PlaneIntersections beside;
    private final double[] lit;
    private final Blocking.Test hidden;
    private final boolean hiding;
    private final boolean sharp;
    private final double reflectedShare;
    private final Shadow shadow;
    private final Optional<PanelTally> panels;
    private final double[] landed;

    /**
     * Catches for one replicate.
     *
     * @param target the pan or disc
     * @param sunInTarget direction to the sun's centre, target frame
     * @param largestSunAngle no sunlight comes from farther off that direction, rad
     * @param reflectedShare share of unshaded light that leaves the mirrors as a beam
     * @param caster where the light comes from
     * @param batch rays per batch
     * @param tally receives the counts
     * @param panels receives them panel by panel, if wanted
     */
    LightCatcher(
            Target target,
            Vec sunInTarget,
            double largestSunAngle,
            double reflectedShare,
            LightCaster caster,
            int batch,
            Tally tally,
            Optional<PanelTally> panels) {
        this.tally = tally;
        this.panels = panels;
        landed = new double[panels.isPresent() ? batch : 0];
        this.reflectedShare = reflectedShare;
        radius = target.radiusMetres();
        double height = target instanceof Pan pan ? pan.heightMetres() : 0;
        bare = !(target instanceof Pan);
        body = new Cylinder(radius, height, bare);
        shadow = new Shadow(target, sunInTarget, largestSunAngle);
        share = new DiscHitProbability(batch, radius);
        inside = new PlaneIntersections(batch);
        beside = new PlaneIntersections(batch);
        lit = new double[batch];
        hiding = caster.hiding().possible();
        hidden = caster.hiding().test();
        sharp = caster.sharp();
    }

    /** Catches a batch. */
    public void catchLight(LightBatch light) {
        countMirrors(light);
        if (sharp) {
            Arrays.fill(beside.weight, 1);
        } else {
            share.judge(light);
            drawInside(light);
            drawBeside(light);
            inside.land(light, false);
            count(light, inside);
        }
        beside.land(light, sharp);
        count(light, beside);
        tally.rays += light.capacity;
        panels.ifPresent(sums -> {
            sums.count(light, lit, landed);
            Arrays.fill(landed, 0);
        });
    }

    /** Counts the light up to its reflection; what is reflected of each ray goes into {@link #lit}. */
    private void countMirrors(LightBatch light) {
        double gap = 0;
        double incident = 0;
        double shaded = 0;
        double unshaded = 0;
        for (int i = 0; i < light.capacity; i++) {
            double watts = light.watts[i];
            lit[i] = 0;
            if (light.panel[i] < 0) {
                gap += watts;
                continue;
            }
            incident += watts;
            if (shadow.isCast() && mayBeShaded(light, i) && isShaded(light, i)) {
                shaded += watts;
                continue;
            }
            unshaded += watts;
            lit[i] = watts * reflectedShare;
        }
        tally.gap += gap;
        tally.incident += incident;
        tally.shaded += shaded;
        tally.lit += unshaded;
    }

    private boolean mayBeShaded(LightBatch light, int i) {
        return shadow.mayCover(light.px[i], light.py[i], light.pz[i]);
    }

    private boolean isShaded(LightBatch light, int i) {
        return body.meet(light.px[i], light.py[i], light.pz[i], light.sx[i], light.sy[i], light.sz[i])
                != Cylinder.NOTHING;
    }

    /** 0 if a is below b, else 1, without a branch that would be guessed wrong half the time. */
    private static int notBelow(double a, double b) {
        return 1 - (int) (Double.doubleToRawLongBits(a - b) >>> 63);
    }

    /** One error per ray among those that bring it into the disc. */
    private void drawInside(LightBatch light) {
        int n = light.capacity;
        for (int i = 0; i < n; i++) {
            double first = share.within[i];
            double both = first + share.within[n + i];
            double v = light.draw[i] * both;
            int line = notBelow(v, first);
            int at = i + line * n;
            inside.at[i] = at;
            inside.share[i] = share.below[at] + v - first * ZERO_ONE[line];
            inside.weight[i] = 0.5 * both;
        }
    }

    /** One error per ray among all others. */
    private void drawBeside(LightBatch light) {
        int n = light.capacity;
        for (int i = 0; i < n; i++) {
            double first = 1 - share.within[i];
            double both = first + 1 - share.within[n + i];
            double v = light.draw[i] * both;
            int line = notBelow(v, first);
            int at = i + line * n;
            double y = v - first * ZERO_ONE[line];
            int above = notBelow(y, share.below[at]);
            beside.at[i] = at;
            beside.share[i] = y + share.within[at] * ZERO_ONE[above];
            beside.weight[i] = 0.5 * both;
        }
    }

    /** Judges and counts what each landing meets. */
    private void count(LightBatch light, PlaneIntersections landing) {
        for (int i = 0; i < light.capacity; i++) {
            double watts = lit[i] * landing.weight[i];
            if (watts == 0) {
                continue;
            }
            boolean crosses = landing.reach[i] > 0 && light.pz[i] < 0;
            if (crosses && !hiding && (bare || landing.radius[i] <= radius)) {
                boolean caught = landing.radius[i] <= radius;
                cross(landing, i, caught, watts);
                tally.missed += caught ? 0 : watts;
            } else {
                meetBody(light, i, landing, watts);
            }
        }
    }

    private void cross(PlaneIntersections landing, int i, boolean caught, double watts) {
        tally.cross(landing.x[i], landing.y[i], landing.radius[i], caught, watts);
        if (caught) {
            tally.undersideSlant += watts * landing.out.dz[i] * landing.perLength[i];
            land(i, watts);
        }
    }

    private void land(int i, double watts) {
        if (panels.isPresent()) {
            landed[i] += watts;
        }
    }

    /** The general case: wall, lid, panels in the way. */
    private void meetBody(LightBatch light, int i, PlaneIntersections landing, double watts) {
        double dx = landing.out.dx[i];
        double dy = landing.out.dy[i];
        double dz = landing.out.dz[i];
        int met = body.meet(light.px[i], light.py[i], light.pz[i], dx, dy, dz);
        if (hiding && (body.crossed || met != Cylinder.NOTHING) && hidden.stops(light, i, dx, dy, dz, body.reach)) {
            tally.missed += watts;
            return;
        }
        if (body.crossed) {
            cross(landing, i, met == Cylinder.UNDERSIDE, watts);
        }
        tally.hit(body, met, dx, dy, dz, landing.perLength[i], watts);
        if (met == Cylinder.WALL || met == Cylinder.LID) {
            land(i, watts);
        }
    }
}
