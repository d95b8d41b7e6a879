package simmerpoint.target;

import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;
import simmerpoint.sampling.RadiusLaw;
import simmerpoint.tracing.ErrorLine;
import simmerpoint.tracing.Hiding;
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
public final class TargetCatch {
    private final Tally tally;
    private final Cylinder body;
    private final DiscShare share;
    private final Hiding.Test hidden;
    private final boolean hiding;
    private final boolean sharp;
    private final boolean shades;
    private final double reflectedShare;
    private final Shadow shadow;

    /**
     * Catches for one replicate.
     *
     * @param target the pan or disc
     * @param sunInTarget direction to the sun's centre, target frame
     * @param largestSunAngle no sunlight comes from farther off that direction, rad
     * @param reflectedShare share of unshaded light that leaves the mirrors as a beam
     * @param caster where the light comes from
     * @param tally receives the counts
     */
    TargetCatch(
            Target target,
            Vec sunInTarget,
            double largestSunAngle,
            double reflectedShare,
            LightCaster caster,
            Tally tally) {
        this.tally = tally;
        this.reflectedShare = reflectedShare;
        double height = target instanceof Pan pan ? pan.heightMetres() : 0;
        shades = target instanceof Pan;
        body = new Cylinder(target.radiusMetres(), height, !shades);
        shadow = new Shadow(target.radiusMetres(), height, sunInTarget, largestSunAngle);
        share = new DiscShare(LightCaster.BATCH, target.radiusMetres());
        hiding = caster.hiding().possible();
        hidden = caster.hiding().test();
        sharp = caster.sharp();
    }

    /** Catches a batch. */
    public void catchLight(LightBatch light) {
        if (!sharp) {
            share.judge(light);
        }
        for (int i = 0; i < light.size; i++) {
            double watts = light.watts[i];
            if (light.panel[i] < 0) {
                tally.gap += watts;
                continue;
            }
            tally.incident += watts;
            if (shades && shadow.mayCover(light, i) && isShaded(light, i)) {
                tally.shaded += watts;
                continue;
            }
            tally.lit += watts;
            if (sharp) {
                land(light, i, light.a, 0, watts * reflectedShare);
            } else {
                landTwice(light, i, watts * reflectedShare);
            }
        }
        tally.rays += light.size;
    }

    private boolean isShaded(LightBatch light, int i) {
        return body.meet(light.px[i], light.py[i], light.pz[i], light.sx[i], light.sy[i], light.sz[i])
                != Cylinder.NOTHING;
    }

    private void landTwice(LightBatch light, int i, double watts) {
        double withinA = share.withinA[i];
        double within = withinA + share.withinB[i];
        double draw = light.draw[i];
        if (within > 0) {
            double v = draw * within;
            if (v < withinA) {
                land(light, i, light.a, RadiusLaw.inverse(share.belowA[i] + v), 0.5 * within * watts);
            } else {
                land(light, i, light.b, RadiusLaw.inverse(share.belowB[i] + v - withinA), 0.5 * within * watts);
            }
        }
        double beside = 2 - within;
        double besideA = 1 - withinA;
        double v = draw * beside;
        if (v < besideA) {
            double y = v < share.belowA[i] ? v : v + withinA;
            land(light, i, light.a, RadiusLaw.inverse(y), 0.5 * beside * watts);
        } else {
            v -= besideA;
            double y = v < share.belowB[i] ? v : v + share.withinB[i];
            land(light, i, light.b, RadiusLaw.inverse(y), 0.5 * beside * watts);
        }
    }

    /** Lands the ray whose error has the signed radius {@code rho} along {@code line}. */
    private void land(LightBatch light, int i, ErrorLine line, double rho, double watts) {
        double dx = light.rx[i] + rho * (line.x1[i] + rho * line.x2[i]);
        double dy = light.ry[i] + rho * (line.y1[i] + rho * line.y2[i]);
        double dz = light.rz[i] + rho * (line.z1[i] + rho * line.z2[i]);
        int met = body.meet(light.px[i], light.py[i], light.pz[i], dx, dy, dz);
        if (hiding && (body.crossed || met != Cylinder.NOTHING) && hidden.stops(light, i, dx, dy, dz, body.reach)) {
            tally.missed += watts;
            return;
        }
        if (body.crossed) {
            tally.cross(body.planeX, body.planeY, met == Cylinder.UNDERSIDE, watts);
        }
        if (met == Cylinder.NOTHING) {
            tally.missed += watts;
        } else if (met == Cylinder.WALL) {
            tally.hitWall(body.x, body.y, body.z, watts);
        } else if (met == Cylinder.LID) {
            tally.hitLid(body.x, body.y, watts);
        }
    }
}
