package simmerpoint.study.likely;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.doubts.Doubt;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.study.trace.DoubtShare;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.VarianceShares;

/**
 * Propagates the doubts of a scenario by drawing cookers (JCGM 101:2008), each traced with few rays. The draws depend on the seed
 * and not on the number of threads.
 */
public final class LikelyStudy {
    /** 2^{@value} cookers for the range alone: each end is good to a tenth of its width. */
    public static final int FOR_RANGE = 7;

    /** 2^{@value} cookers where the shares of the causes are told too: those are good to some 0.03. */
    public static final int FOR_SHARES = 9;

    private final CookerDraws draws;

    private LikelyStudy(CookerDraws draws) {
        this.draws = draws;
    }

    /** The likely range of {@code read} from 2^{@code bits} cookers. */
    public static LikelyResult run(CheckedScenario read, int bits, TraceOptions options, Progress progress) {
        return run(ScenarioDoubts.of(read), bits, options, progress);
    }

    /**
     * The likely range with other doubts.
     *
     * @param bits 2^bits cookers
     * @throws ImpossibleSetupException if none of them can stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static LikelyResult run(ScenarioDoubts doubts, int bits, TraceOptions options, Progress progress) {
        return new LikelyStudy(CookerDraws.of(doubts, bits, options)).run(progress);
    }

    private LikelyResult run(Progress progress) {
        List<Optional<DrawnOutcome>> outcomes = draws.each(cooker -> FewRayTrace.of(cooker, draws.options()), progress);
        DrawnOutcomes found =
                DrawnOutcomes.of(outcomes.stream().flatMap(Optional::stream).toList());
        return found.result(draws.doubts().hasPan(), shares(outcomes, found.all(DrawnOutcome::power)));
    }

    /** Causes of one name are one. Cookers that cannot stand count as the mean, so that the draws stay as even as they are. */
    private List<DoubtShare> shares(List<Optional<DrawnOutcome>> outcomes, double[] powers) {
        double mean = Arrays.stream(powers).average().orElse(0);
        double[] results = outcomes.stream()
                .mapToDouble(outcome -> outcome.map(DrawnOutcome::power).orElse(mean))
                .toArray();
        VarianceShares of = VarianceShares.of(draws.draws(), results);
        List<Doubt> doubts = draws.doubts().all();
        Map<String, DoubtShare> byName = new LinkedHashMap<>();
        IntStream.range(0, doubts.size())
                .forEach(k -> byName.merge(doubts.get(k).name(), share(doubts.get(k), of.of(k)), LikelyStudy::sum));
        List<DoubtShare> sorted = new ArrayList<>(byName.values().stream()
                .sorted(Comparator.comparingDouble((DoubtShare s) -> -s.share()))
                .toList());
        sorted.add(leftOver(of.rest()));
        return sorted;
    }

    private static DoubtShare leftOver(double share) {
        return new DoubtShare(
                "luck in gluing, and what causes do together", share, false, "drawn anew for every cooker", "");
    }

    private static DoubtShare share(Doubt doubt, double share) {
        return new DoubtShare(doubt.name(), share, doubt.given(), doubt.source(), doubt.measurement());
    }

    private static DoubtShare sum(DoubtShare one, DoubtShare other) {
        return new DoubtShare(
                one.name(), one.share() + other.share(), one.given() || other.given(), one.source(), one.measurement());
    }
}
