package simmerpoint.study.trace;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import simmerpoint.target.LightCatcher;
import simmerpoint.target.TallyStatistics;
import simmerpoint.target.TargetScene;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.LightCaster;

/** All replicates of one target in the light of a caster. Each thread has one catcher for all replicates that it fills. */
public final class ReplicateCatchers {
    private final TargetScene plan;
    private final LightCaster caster;
    private final int batch;
    private final List<TargetScene.Replicate> replicates;
    private final Map<Thread, LightCatcher> ofThread = new ConcurrentHashMap<>();

    /**
     * For one target.
     *
     * @param plan where it stands
     * @param caster of the light
     * @param batch rays per batch
     */
    public ReplicateCatchers(TargetScene plan, LightCaster caster, int batch) {
        this.plan = plan;
        this.caster = caster;
        this.batch = batch;
        replicates = IntStream.range(0, ReplicateCaster.REPLICATES)
                .mapToObj(r -> plan.new Replicate())
                .toList();
    }

    /** Catches a batch of replicate {@code r}; different replicates may do so at once. */
    public void catchLight(int r, LightBatch light) {
        LightCatcher catcher = ofThread.computeIfAbsent(
                Thread.currentThread(), t -> replicates.get(r).catcher(caster, batch));
        replicates.get(r).receive(catcher);
        catcher.catchLight(light);
    }

    /** Statistics over the replicates, which must have caught equally many rays. */
    public TallyStatistics statistics() {
        return plan.statistics(replicates);
    }
}
