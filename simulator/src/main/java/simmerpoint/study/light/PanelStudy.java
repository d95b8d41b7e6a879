package simmerpoint.study.light;

import java.util.stream.IntStream;
import simmerpoint.dish.built.BuiltDish;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.target.LightCatcher;
import simmerpoint.target.PanelTally;
import simmerpoint.target.TargetScene;

/**
 * Traces what each panel sends and how much of it lands, for any dish: also where panels hide each other, which {@link
 * StoredLight} cannot serve.
 */
public final class PanelStudy {
    private PanelStudy() {}

    /**
     * Traces {@code scenario} with the rays, threads and seed of {@code options}.
     *
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static PanelWatts run(Scenario scenario, TraceOptions options, Progress progress) {
        return run(scenario, scenario.built(), options, progress);
    }

    /** The same of another dish in its place. */
    public static PanelWatts run(Scenario scenario, BuiltDish dish, TraceOptions options, Progress progress) {
        ReplicateCaster casting = new ReplicateCaster(scenario, dish, options, options.seed());
        TargetScene plan = TargetScene.forWatts(scenario.target(), casting.setup(), scenario.sun(), dish);
        int bits = ReplicateCaster.bitsFor(options.rays());
        PanelTally[] sums = IntStream.range(0, ReplicateCaster.REPLICATES)
                .mapToObj(r -> new PanelTally(casting.surface().panels()))
                .toArray(PanelTally[]::new);
        LightCatcher[] catchers = IntStream.range(0, ReplicateCaster.REPLICATES)
                .mapToObj(r -> plan.new Replicate().catcher(casting.caster(), ReplicateCaster.batchSize(bits), sums[r]))
                .toArray(LightCatcher[]::new);
        casting.castAll(bits, progress, (r, light) -> catchers[r].catchLight(light));
        PanelTally all = new PanelTally(casting.surface().panels());
        for (PanelTally one : sums) {
            all.add(one);
        }
        return new PanelWatts(scenario, all, (long) ReplicateCaster.REPLICATES << bits);
    }
}
