package simmerpoint.study.light;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.geometry.Pose;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.ReplicateWorkers;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.target.PanelTally;
import simmerpoint.target.StoredRayCatcher;
import simmerpoint.target.TargetScene;
import simmerpoint.tracing.ErrorSampler;
import simmerpoint.tracing.ReflectedRays;

/**
 * The light of one scenario, cast once and kept, to be caught anew at once while someone moves the pan, changes it, or
 * changes how much the mirrors reflect. About 80 bytes a ray. Noisier than {@link TraceStudy} with equally many rays, since
 * every ray lands once; same replicates, same seed. Immutable; may be used by several threads.
 */
public final class StoredLight {
    private final LightKey key;
    private final TraceOptions options;
    private final ReplicateCaster casting;
    private final Pose homeInDish;
    private final long raysEach;
    private final List<List<ReflectedRays>> batches = new ArrayList<>();
    private final double[] gap = new double[ReplicateCaster.REPLICATES];
    private final double[] covered = new double[ReplicateCaster.REPLICATES];

    private StoredLight(Scenario scenario, TraceOptions options, Progress progress) {
        this.options = options;
        key = LightKey.wherever(scenario);
        casting = new ReplicateCaster(scenario, options);
        homeInDish = casting.setup().dishInTarget().inverse();
        int bits = ReplicateCaster.bitsFor(options.rays());
        raysEach = 1L << bits;
        ErrorSampler[] draws = new ErrorSampler[ReplicateCaster.REPLICATES];
        for (int r = 0; r < ReplicateCaster.REPLICATES; r++) {
            batches.add(new ArrayList<>());
            draws[r] = new ErrorSampler(ReplicateCaster.batchSize(bits));
        }
        casting.castAll(bits, progress, (r, light) -> {
            for (int i = 0; i < light.capacity; i++) {
                gap[r] += light.panel[i] < 0 ? light.watts[i] * light.beam : 0;
                covered[r] += light.panel[i] == MirrorPoints.COVERED ? light.watts[i] * light.beam : 0;
            }
            batches.get(r).add(ReflectedRays.of(light, draws[r].sample(light)));
        });
        batches.replaceAll(small -> ReflectedRays.merged(small, StoredRayCatcher.MAX_BATCH));
    }

    /**
     * Casts and keeps the light of {@code scenario}.
     *
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static StoredLight cast(Scenario scenario, TraceOptions options, Progress progress) {
        return new StoredLight(scenario, options, progress);
    }

    /** Whether {@code scenario} has the same mirrors under the same sun, none of them hidden by another. */
    public boolean serves(Scenario scenario) {
        return !casting.caster().blocking().possible() && key.equals(LightKey.wherever(scenario));
    }

    /** Rays behind each figure. */
    public long rays() {
        return raysEach * ReplicateCaster.REPLICATES;
    }

    /**
     * What the stored light does in {@code scenario}, which it must {@linkplain #serves serve}.
     *
     * @throws ImpossibleSetupException if the target would stand in the mirror
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public TraceResult catchFor(Scenario scenario, Progress progress) {
        if (!serves(scenario)) {
            throw new IllegalArgumentException("this light comes from other mirrors or another sun");
        }
        long start = System.nanoTime();
        Setup setup = scenario.setup();
        ReplicateCaster.refuseInMirror(casting.surface(), setup, scenario.target());
        TargetScene plan =
                new TargetScene(scenario.target(), setup, scenario.sun(), scenario.built(), options.peakDiscRadius());
        TargetScene.Replicate[] replicates = new TargetScene.Replicate[ReplicateCaster.REPLICATES];
        Pose pose = homeInDish.in(setup.dishInTarget());
        try (ReplicateWorkers workers = casting.workers(progress)) {
            workers.run(0, 1, (r, watch) -> {
                replicates[r] = plan.new Replicate();
                StoredRayCatcher catcher = replicates[r].storedRayCatcher();
                catcher.addGap(raysEach, gap[r], covered[r]);
                batches.get(r).forEach(rays -> catcher.add(rays, pose));
                watch.step(1, 1);
            });
        }
        double seconds = (System.nanoTime() - start) * 1e-9;
        return TraceStudy.result(casting, scenario, options, plan.statistics(List.of(replicates)), true, seconds);
    }

    /**
     * What every panel sends in {@code scenario}, which this light must {@linkplain #serves serve}, and how much of that
     * lands. Works on the caller's thread.
     *
     * @throws ImpossibleSetupException if the target would stand in the mirror
     */
    public PanelWatts panelsFor(Scenario scenario) {
        if (!serves(scenario)) {
            throw new IllegalArgumentException("this light comes from other mirrors or another sun");
        }
        Setup setup = scenario.setup();
        ReplicateCaster.refuseInMirror(casting.surface(), setup, scenario.target());
        TargetScene plan = TargetScene.forWatts(scenario.target(), setup, scenario.sun(), scenario.built());
        Pose pose = homeInDish.in(setup.dishInTarget());
        PanelTally sums = new PanelTally(casting.surface().panels());
        for (List<ReflectedRays> replicate : batches) {
            StoredRayCatcher catcher = plan.new Replicate().storedRayCatcher(sums);
            replicate.forEach(rays -> catcher.add(rays, pose));
        }
        return new PanelWatts(scenario, sums, rays());
    }

    /**
     * At most {@code most} of the stored rays, chosen by where they left the mirror and not by where they go: near the
     * upright plane through the axis, evenly from the lower edge to the upper one.
     */
    public RaySample sample(int most) {
        return RaySample.of(batches.get(0), homeInDish, casting.surface().radius(), most);
    }
}
