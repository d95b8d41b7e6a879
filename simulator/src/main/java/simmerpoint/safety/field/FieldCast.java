package simmerpoint.safety.field;

import java.util.List;
import java.util.OptionalDouble;
import simmerpoint.dish.built.MirrorShares;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.target.TargetIntersection;
import simmerpoint.target.TargetShade;
import simmerpoint.tracing.Blocking;
import simmerpoint.tracing.ErrorSampler;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedDirections;

/**
 * Follows the rays of traced batches through the yard: from the mirror to pan, grate, ground or far away, with up to
 * {@value #BOUNCES} more reflections in the bowl, each with the brightest mirror's reflectance and without new errors. With the pan in
 * place it shades the mirror and stops light; without it, nothing does but the ground and the bowl. Up to the pan both are one
 * light, which is followed once. One instance per thread.
 */
final class FieldCast {
    /** More reflections carry less than a thousandth of the light: the share of them falls by half or more each time. */
    static final int BOUNCES = 4;

    /** A block by panels of a mesh is found to this share of its path. */
    private static final int HALVINGS = 16;

    private static final double FAR = 1e3;

    private final boolean panStands;
    private final List<FieldTally> with;
    private final List<FieldTally> rest;
    private final TargetIntersection pan;
    private final Support.Cover support;
    private final TargetShade shade;
    private final Bowl bowl;
    private final FrameMap toDish;
    private final FrameMap toTarget;
    private final FrameMap toYard;
    private final Blocking.Test blocking;
    private final boolean panelsBlock;
    private final ErrorSampler sampler;
    private final MirrorShares shares;
    private final AroundDish around;
    private final double perRay;
    private final double[] p = new double[3];
    private final double[] d = new double[3];
    private final double[] s = new double[3];
    private final double[] q = new double[3];
    private final double[] e = new double[3];

    /**
     * For one replicate.
     *
     * @param with gets the light with the pan in place; empty if that is not wanted
     * @param rest gets the light that is there only without the pan, which is all of it if {@code with} is empty; empty if that is not
     *     wanted
     */
    FieldCast(Scenario scenario, ReplicateCaster casting, List<FieldTally> with, List<FieldTally> rest, int bits) {
        Setup setup = casting.setup();
        panStands = scenario.target() instanceof Pan;
        this.with = with;
        this.rest = rest;
        pan = new TargetIntersection(scenario.target());
        support = (scenario.target() instanceof Pan vessel ? vessel.support() : Support.NONE).cover();
        shade = new TargetShade(scenario.target());
        bowl = new Bowl(scenario.dish());
        toDish = new FrameMap(v -> setup.dish().fromParent(setup.target().toParent(v)));
        toTarget = new FrameMap(v -> setup.target().fromParent(setup.dish().toParent(v)));
        toYard = Yard.of(scenario).from(setup.dish());
        blocking = casting.caster().blocking().test();
        panelsBlock = casting.caster().blocking().possible();
        sampler = new ErrorSampler(ReplicateCaster.batchSize(bits));
        shares = scenario.built().shares();
        around = new AroundDish(ReplicateCaster.batchSize(bits));
        perRay = Math.pow(2, -bits);
    }

    /** Adds a batch, around the dish, so that one ray crosses the cells of the one before it while they are at hand. */
    void add(LightBatch light) {
        ReflectedDirections directions = sampler.sample(light);
        for (int i : around.order(light, toDish)) {
            if (light.panel[i] >= 0 && light.watts[i] > 0 && reached(light, i)) {
                boolean lit = !with.isEmpty() && !shaded(light, i);
                if (lit || !rest.isEmpty()) {
                    follow(light, directions, i, lit);
                }
            }
        }
    }

    /** Whether the sun reaches the mirror point, a pan aside. */
    private boolean reached(LightBatch light, int i) {
        toDish.point(light.px[i], light.py[i], light.pz[i], p);
        toDish.direction(light.sx[i], light.sy[i], light.sz[i], s);
        return !(bowl.across(p, s) < FAR);
    }

    /** Whether the pan or what it stands on shades the mirror point. */
    private boolean shaded(LightBatch light, int i) {
        return panStands && shade.stops(light, i);
    }

    /** {@code lit}: the light is there with the pan in place, too, as far as to the pan. */
    private void follow(LightBatch light, ReflectedDirections directions, int i, boolean lit) {
        double x = directions.dx[i];
        double y = directions.dy[i];
        double z = directions.dz[i];
        double unit = 1 / Math.sqrt(x * x + y * y + z * z);
        toDish.direction(x * unit, y * unit, z * unit, d);
        double watts = light.watts[i] * light.beam * shares.reflected(light.zones.of(light.panel[i])) * perRay;
        double limit = panelsBlock ? free(light, i, x * unit, y * unit, z * unit) : Double.POSITIVE_INFINITY;
        boolean both = lit;
        for (int bounce = 0; bounce <= BOUNCES; bounce++) {
            double wall = bowl.across(p, d);
            double end = Math.min(limit, wall);
            double stop = !both ? 0 : panStands ? Math.min(end, stopped()) : end;
            toYard.point(p[0], p[1], p[2], q);
            toYard.direction(d[0], d[1], d[2], e);
            if (both) {
                add(with, 0, stop, watts);
            }
            if (stop < end) {
                add(rest, stop, end, watts);
                both = false;
            }
            if (!(wall < limit) || (rest.isEmpty() && !both)) {
                return;
            }
            for (int k = 0; k < 3; k++) {
                p[k] += wall * d[k];
            }
            bowl.reflect(p, d);
            watts *= shares.largestReflected();
        }
    }

    private void add(List<FieldTally> tallies, double begin, double end, double watts) {
        for (FieldTally tally : tallies) {
            tally.add(q, e, begin, end, watts);
        }
    }

    /** Path to the pan or to what it stands on, m. */
    private double stopped() {
        toTarget.point(p[0], p[1], p[2], q);
        toTarget.direction(d[0], d[1], d[2], e);
        if (support.stops(q[0], q[1], q[2], e[0], e[1], e[2])) {
            return -q[2] / e[2];
        }
        OptionalDouble hit = pan.distance(new Vec(q[0], q[1], q[2]), new Vec(e[0], e[1], e[2]));
        return hit.orElse(Double.POSITIVE_INFINITY);
    }

    /** Path to the panel of a mesh that stops the ray, m. */
    private double free(LightBatch light, int i, double x, double y, double z) {
        if (!blocking.blocks(light, i, x, y, z, FAR)) {
            return Double.POSITIVE_INFINITY;
        }
        double free = 0;
        double blocked = FAR;
        for (int k = 0; k < HALVINGS + 8; k++) {
            double middle = (free + blocked) / 2;
            if (blocking.blocks(light, i, x, y, z, middle)) {
                blocked = middle;
            } else {
                free = middle;
            }
        }
        return free;
    }
}
