package simmerpoint.study.likely;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.doubts.DrawnCooker;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** Pans of cookers as they may turn out, and of the cooker as given, each in its light. */
public final class LitPans {
    /** 2^{@value} rays for a single cooker: those that differ in one thing share them, so that their difference is known better. */
    private static final int BITS_OF_ONE = 14;

    private LitPans() {}

    /**
     * What {@code work} makes of every drawn cooker's pan, in the order of the draws, with the same draws as {@link LikelyStudy}; empty
     * where the values of a draw do not go together.
     *
     * @param doubts of the cookers
     * @param bits 2^bits cookers
     * @param options for rays, seed and threads
     * @param work done on several threads
     */
    public static <T> List<Optional<T>> drawn(
            ScenarioDoubts doubts, int bits, TraceOptions options, Function<LitPan, T> work, Progress progress) {
        return CookerDraws.of(doubts, bits, options)
                .each(cooker -> work.apply(pan(cooker, FewRayTrace.BITS, options)), progress);
    }

    /** The pan of one scenario, exactly as given; empty where it cannot stand so. */
    public static Optional<LitPan> given(Scenario scenario, TraceOptions options) {
        try {
            DrawnCooker cooker = new DrawnCooker(scenario, 1, LossFactors.LIKELY, 0, 0);
            return Optional.of(pan(cooker, BITS_OF_ONE, options));
        } catch (ImpossibleSetupException e) {
            return Optional.empty();
        }
    }

    private static LitPan pan(DrawnCooker cooker, int bits, TraceOptions options) {
        return new LitPan(
                cooker.scenario().cooking().orElseThrow(),
                cooker.losses(),
                FewRayTrace.absorbed(cooker, bits, options));
    }
}
