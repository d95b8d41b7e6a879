package simmerpoint.study;

import java.util.stream.IntStream;
import simmerpoint.scenario.Scenario;
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
        Casting casting = new Casting(scenario, options);
        TargetScene plan = TargetScene.forWatts(scenario.target(), casting.setup(), scenario.sun(), scenario.built());
        int bits = Casting.bitsFor(options.rays());
        PanelTally[] sums = IntStream.range(0, Casting.REPLICATES)
                .mapToObj(r -> new PanelTally(casting.surface().panels()))
                .toArray(PanelTally[]::new);
        LightCatcher[] catchers = IntStream.range(0, Casting.REPLICATES)
                .mapToObj(r -> plan.new Replicate().catcher(casting.caster(), Casting.batchSize(bits), sums[r]))
                .toArray(LightCatcher[]::new);
        casting.castAll(bits, progress, (r, light) -> catchers[r].catchLight(light));
        PanelTally all = new PanelTally(casting.surface().panels());
        for (PanelTally one : sums) {
            all.add(one);
        }
        return new PanelWatts(scenario, all, (long) Casting.REPLICATES << bits);
    }
}
