package simmerpoint.study.likely;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.heat.balance.BoilingTimes;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.doubts.Doubt;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.study.trace.DoubtShare;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateWorkers;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.Draws;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.uncertainty.Quantiles;
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

    private final ScenarioDoubts doubts;
    private final TraceOptions options;
    private final Draws draws;
    private final DrawnOutcome[] outcomes;

    private LikelyStudy(ScenarioDoubts doubts, int bits, TraceOptions options) {
        this.doubts = doubts;
        this.options = options;
        draws = Draws.of(doubts.all().size(), bits, options.seed());
        outcomes = new DrawnOutcome[1 << bits];
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
        return new LikelyStudy(doubts, bits, options).run(progress);
    }

    private LikelyResult run(Progress progress) {
        int threads = Math.min(options.threads(), outcomes.length);
        try (ReplicateWorkers workers = new ReplicateWorkers(threads, outcomes.length, progress)) {
            workers.run(0, 1, (draw, watch) -> {
                outcomes[draw] = outcome(draw);
                watch.step(1, 1);
            });
        }
        List<DrawnOutcome> found =
                Arrays.stream(outcomes).filter(Objects::nonNull).toList();
        if (found.isEmpty()) {
            throw new ImpossibleSetupException("none of the likely cookers can stand as asked");
        }
        double[] powers = found.stream().mapToDouble(DrawnOutcome::power).toArray();
        boolean pan = doubts.hasPan();
        return new LikelyResult(
                new Quantiles(powers).likelyRange(),
                pan ? Optional.of(boil(found)) : Optional.empty(),
                pan ? Optional.of(level(found)) : Optional.empty(),
                shares(powers),
                found.size());
    }

    /** Null if the values of this draw do not go together. */
    private DrawnOutcome outcome(int draw) {
        try {
            return doubts.cooker(draws, draw)
                    .map(cooker -> FewRayTrace.of(cooker, options))
                    .orElse(null);
        } catch (ImpossibleSetupException e) {
            return null;
        }
    }

    private static BoilingOutcome boil(List<DrawnOutcome> found) {
        double[] seconds = found.stream().mapToDouble(DrawnOutcome::boilSeconds).toArray();
        double median = new Quantiles(seconds).at(0.5);
        LikelyRange settles = new Quantiles(
                        found.stream().mapToDouble(DrawnOutcome::settlesCelsius).toArray())
                .likelyRange();
        return BoilingTimes.outcome(
                Double.isFinite(median) ? OptionalDouble.of(median) : OptionalDouble.empty(), seconds, settles);
    }

    private static HeatLevelRange level(List<DrawnOutcome> found) {
        List<HeatLevel> levels =
                found.stream().map(DrawnOutcome::level).sorted().toList();
        int tenth = levels.size() / 10;
        return new HeatLevelRange(
                levels.get(tenth), levels.get(levels.size() / 2), levels.get(levels.size() - 1 - tenth));
    }

    /** Causes of one name are one. Cookers that cannot stand count as the mean, so that the draws stay as even as they are. */
    private List<DoubtShare> shares(double[] powers) {
        double mean = Arrays.stream(powers).average().orElse(0);
        double[] results = Arrays.stream(outcomes)
                .mapToDouble(outcome -> outcome == null ? mean : outcome.power())
                .toArray();
        VarianceShares of = VarianceShares.of(draws, results);
        Map<String, DoubtShare> byName = new LinkedHashMap<>();
        IntStream.range(0, doubts.all().size())
                .forEach(k -> byName.merge(
                        doubts.all().get(k).name(), share(doubts.all().get(k), of.of(k)), LikelyStudy::sum));
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
