package simmerpoint.study.likely;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.heat.balance.BoilingTimes;
import simmerpoint.study.trace.DoubtShare;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.uncertainty.Quantiles;

/**
 * Percentiles over what drawn cookers do.
 *
 * @param found of those that can stand
 */
record DrawnOutcomes(List<DrawnOutcome> found) {
    /**
     * Of at least one.
     *
     * @throws ImpossibleSetupException if there is none
     */
    static DrawnOutcomes of(List<DrawnOutcome> found) {
        if (found.isEmpty()) {
            throw noneStands();
        }
        return new DrawnOutcomes(found);
    }

    /** The power of each, empty where it cannot stand. */
    static List<Optional<Double>> powers(List<Optional<DrawnOutcome>> outcomes) {
        return outcomes.stream()
                .map(outcome -> outcome.map(DrawnOutcome::power))
                .toList();
    }

    static ImpossibleSetupException noneStands() {
        return new ImpossibleSetupException("no such cooker can stand as asked");
    }

    LikelyResult result(boolean pan, List<DoubtShare> shares) {
        return new LikelyResult(
                range(DrawnOutcome::power),
                range(DrawnOutcome::lightPerLoss),
                pan ? Optional.of(boil()) : Optional.empty(),
                pan ? Optional.of(level()) : Optional.empty(),
                assured(),
                shares,
                found.size());
    }

    LikelyRange range(ToDoubleFunction<DrawnOutcome> figure) {
        return new Quantiles(all(figure)).likelyRange();
    }

    double[] all(ToDoubleFunction<DrawnOutcome> figure) {
        return found.stream().mapToDouble(figure).toArray();
    }

    private BoilingOutcome boil() {
        double[] seconds = all(DrawnOutcome::boilSeconds);
        double median = new Quantiles(seconds).at(0.5);
        return BoilingTimes.outcome(
                Double.isFinite(median) ? OptionalDouble.of(median) : OptionalDouble.empty(),
                seconds,
                () -> range(DrawnOutcome::settlesCelsius));
    }

    private LikelyResult.Assured assured() {
        double below = LikelyResult.Assured.BELOW;
        return new LikelyResult.Assured(
                new Quantiles(all(DrawnOutcome::power)).at(below), levels().get((int) (below * found.size())));
    }

    private List<HeatLevel> levels() {
        return found.stream().map(DrawnOutcome::level).sorted().toList();
    }

    private HeatLevelRange level() {
        List<HeatLevel> levels = levels();
        int tenth = levels.size() / 10;
        return new HeatLevelRange(
                levels.get(tenth), levels.get(levels.size() / 2), levels.get(levels.size() - 1 - tenth));
    }
}
