package simmerpoint.study.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import simmerpoint.dish.built.MirrorShares;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Plane;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Setup;
import simmerpoint.setup.Stand;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.target.TargetShade;
import simmerpoint.tracing.ErrorSampler;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedDirections;

/**
 * The light that leaves the mirrors as a beam, ray by ray with one sampled error each, for whoever wants to follow it further. What the
 * target keeps off the mirrors is left out, so that the watts add up to those reflected; panels that a ray meets on its way are not
 * looked at. Keeps one batch at a time, whatever the number of rays.
 */
public final class ReflectedLight {
    /** Wide enough to be no point, narrow enough to be in nobody's way. */
    private static final Plane SPECK = new Plane(0.01, 0);

    private final Scenario scenario;
    private final ReplicateCaster casting;
    private final int bits;
    private final TargetShade shade;
    private final ErrorSampler sampler;
    private final MirrorShares shares;
    private final double perRay;

    /**
     * Lays out the light of {@code scenario} with the rays and the seed of {@code options}.
     *
     * @throws simmerpoint.study.trace.ImpossibleSetupException if the things named cannot stand as asked
     */
    public ReflectedLight(Scenario scenario, TraceOptions options) {
        this(scenario, options, options.seed());
    }

    /** The same of a dish that was glued with other luck. */
    public ReflectedLight(Scenario scenario, TraceOptions options, long buildSeed) {
        this.scenario = scenario;
        casting = new ReplicateCaster(scenario, options, buildSeed);
        bits = ReplicateCaster.bitsFor(options.rays());
        shade = new TargetShade(scenario.target());
        sampler = new ErrorSampler(ReplicateCaster.batchSize(bits));
        shares = scenario.built().shares();
        perRay = Math.pow(2, -bits) / ReplicateCaster.REPLICATES;
    }

    /** That of a dish aimed dead on, with nothing in its light. */
    public static ReflectedLight deadOn(Scenario scenario, TraceOptions options, long buildSeed) {
        Scenario bare = scenario.withCooking(Optional.empty())
                .withTarget(SPECK)
                .withStand(Stand.AT_FOCUS)
                .withAim(Aim.PERFECT);
        return new ReflectedLight(bare, options, buildSeed);
    }

    /** Of what. */
    public Scenario scenario() {
        return scenario;
    }

    /** How everything stands. */
    public Setup setup() {
        return casting.setup();
    }

    /**
     * The rays, cast on the caller's thread as they are asked for.
     *
     * @throws CancellationException later, if {@code progress} says stop
     */
    public Stream<ReflectedRay> rays(Progress progress) {
        double all = ReplicateCaster.REPLICATES * Math.pow(2, bits);
        long[] done = {0};
        return IntStream.range(0, ReplicateCaster.REPLICATES)
                .boxed()
                .flatMap(r -> casting.batches(r, bits))
                .flatMap(batch -> {
                    done[0] += batch.capacity;
                    if (!progress.report(done[0] / all, "writing rays")) {
                        throw new CancellationException();
                    }
                    return reflected(batch).stream();
                });
    }

    private List<ReflectedRay> reflected(LightBatch light) {
        ReflectedDirections away = sampler.sample(light);
        Pose inTarget = casting.setup().target();
        List<ReflectedRay> rays = new ArrayList<>(light.capacity);
        for (int i = 0; i < light.capacity; i++) {
            if (light.panel[i] >= 0 && light.watts[i] > 0 && !shade.stops(light, i)) {
                Vec direction = new Vec(away.dx[i], away.dy[i], away.dz[i]);
                rays.add(new ReflectedRay(
                        inTarget.toParent(new Vec(light.px[i], light.py[i], light.pz[i])),
                        inTarget.rotation().apply(direction.times(1 / direction.length())),
                        light.watts[i] * light.beam * perRay * shares.reflected(light.zones.of(light.panel[i])),
                        light.panel[i]));
            }
        }
        return rays;
    }
}
