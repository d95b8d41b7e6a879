package simmerpoint.study.likely;

import java.util.function.Supplier;
import simmerpoint.study.trace.LazyValue;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.uncertainty.LikelyRange;

/** What is likely at one moment. */
public final class LikelyMoment {
    private final LikelyRange power;
    private final LikelyRange simmerSpareWatts;
    private final Supplier<LikelyResult> result;

    LikelyMoment(LikelyRange power, LikelyRange simmerSpareWatts, Supplier<LikelyResult> result) {
        this.power = power;
        this.simmerSpareWatts = simmerSpareWatts;
        this.result = new LazyValue<>(result);
    }

    /** Cooking power, W. */
    public LikelyRange power() {
        return power;
    }

    /** Watts beyond what a simmer takes; below 0 it does not simmer. */
    public LikelyRange simmerSpareWatts() {
        return simmerSpareWatts;
    }

    /** Everything over all doubts; worked out when first asked for, since it takes ten times as long as the rest. */
    public LikelyResult result() {
        return result.get();
    }
}
