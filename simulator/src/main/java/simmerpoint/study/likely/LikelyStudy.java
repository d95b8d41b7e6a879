package simmerpoint.study.likely;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import simmerpoint.heat.HeatLevel;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.Quantiles;

/**
 * Propagates the doubts of a scenario by drawing cookers (JCGM 101:2008), each traced with few rays. The draws depend on the seed
 * and not on the number of threads.
 */
public final class LikelyStudy {
    /** 2^{@value} cookers for the range alone: each end is good to a tenth of its width. */
    public static final int FOR_RANGE = 7;

    /** 2^{@value} cookers where the shares of the causes are told too: those are good to some 0.03. */
    public static final int FOR_SHARES = 9;

    private LikelyStudy() {}

    /** The likely range of {@code read} from 2^{@code bits} cookers. */
    public static LikelyResult run(CheckedScenario read, int bits, TraceOptions options, Progress progress) {
        return run(ScenarioDoubts.of(read), bits, options, progress);
    }

    /** The same with the shares of the causes from more cookers; the range stays that of every other answer. */
    public static LikelyResult withShares(CheckedScenario read, TraceOptions options, Progress progress) {
        CookerDraws many = CookerDraws.of(ScenarioDoubts.of(read), FOR_SHARES, options);
        List<Optional<Double>> powers =
                many.each(cooker -> FewRayTrace.watts(cooker, Optional.empty(), options), progress);
        return run(read, FOR_RANGE, options, progress).withShares(DoubtShares.of(many, powers));
    }

    /**
     * The likely range with other doubts.
     *
     * @param bits 2^bits cookers
     * @throws ImpossibleSetupException if none of them can stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static LikelyResult run(ScenarioDoubts doubts, int bits, TraceOptions options, Progress progress) {
        return run(CookerDraws.of(doubts, bits, options), UnaryOperator.identity(), progress);
    }

    /** The likely range of {@code read} with every cooker standing or aimed otherwise than the file says. */
    public static LikelyResult run(
            CheckedScenario read, int bits, TraceOptions options, UnaryOperator<Scenario> change, Progress progress) {
        return run(CookerDraws.of(ScenarioDoubts.of(read), bits, options), change, progress);
    }

    /**
     * What four in five cookers have at least, and one in five has not: watts beyond what {@code level} takes, or without a level their
     * power, W. Says nothing else and takes less time than {@link #run}.
     *
     * @throws ImpossibleSetupException if none of them can stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static double assured(
            CheckedScenario read, Optional<HeatLevel> level, int bits, TraceOptions options, Progress progress) {
        CookerDraws draws = CookerDraws.of(ScenarioDoubts.of(read), bits, options);
        double[] watts = draws.each(cooker -> FewRayTrace.watts(cooker, level, options), progress).stream()
                .flatMap(Optional::stream)
                .mapToDouble(w -> w)
                .sorted()
                .toArray();
        if (watts.length == 0) {
            throw DrawnOutcomes.noneStands();
        }
        double below = LikelyResult.Assured.BELOW;
        return level.isPresent() ? watts[(int) (below * watts.length)] : new Quantiles(watts).at(below);
    }

    private static LikelyResult run(CookerDraws draws, UnaryOperator<Scenario> change, Progress progress) {
        List<Optional<DrawnOutcome>> outcomes =
                draws.each(cooker -> FewRayTrace.of(cooker.changed(change), draws.options()), progress);
        DrawnOutcomes found =
                DrawnOutcomes.of(outcomes.stream().flatMap(Optional::stream).toList());
        return found.result(draws.doubts().hasPan(), DoubtShares.of(draws, DrawnOutcomes.powers(outcomes)));
    }
}
