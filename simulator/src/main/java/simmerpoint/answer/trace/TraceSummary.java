package simmerpoint.answer.trace;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.HeatSentences;
import simmerpoint.answer.words.LikelyWords;
import simmerpoint.answer.words.PowerWords;
import simmerpoint.answer.words.TargetWords;
import simmerpoint.heat.HeatLevel;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/**
 * What a cook keeps in sight of a traced scenario while changing it: the words and digits of {@link TraceAnswer}, each
 * alone.
 *
 * @param watts figure and unit, for instance "623 W"
 * @param meaning what becomes of them, for instance "go into the water"
 * @param certainty its likely range, or the same figure with its standard error
 * @param doubt what the doubt comes from most and how to know better; empty where doubts were not looked at
 * @param level the heat level; empty for a bare disc
 * @param water how the water comes to the boil; empty for a bare disc
 * @param largestLoss the largest loss in one sentence
 * @param safety the caution in one line
 */
public record TraceSummary(
        String watts,
        String meaning,
        String certainty,
        String doubt,
        Optional<HeatLevel> level,
        Optional<Water> water,
        String largestLoss,
        String safety) {
    /**
     * What the water does.
     *
     * @param amount for instance "1.9 l of water"
     * @param minutes for instance "boils in 28 to 33 min"
     */
    public record Water(String amount, String minutes) {
        /** Both in one sentence. */
        public String sentence() {
            return amount + " " + minutes + ".";
        }
    }

    /** What is kept in sight of {@code result}, in the units of {@code system}. Takes some 10 ms. */
    public static TraceSummary of(TraceResult result, UnitSystem system) {
        return of(result, MaximumFlux.of(result), system);
    }

    private static TraceSummary of(TraceResult result, double hottest, UnitSystem system) {
        FigureFormat figures = new FigureFormat(system);
        Optional<HeatSentences> heat = result.heat().map(found -> new HeatSentences(found, result.likely(), system));
        Estimate watts = result.useful();
        return new TraceSummary(
                result.likely()
                        .map(likely -> LikelyWords.likely(likely.power()))
                        .orElseGet(() -> figures.plainWatts(watts)),
                new PowerWords(result.heat(), system).meaning(watts),
                result.likely()
                        .map(likely -> LikelyWords.FOUR_IN_FIVE + LikelyWords.span(likely.power()))
                        .orElseGet(() -> figures.watts(watts)),
                result.likely().flatMap(LikelyWords::worthMeasuring).orElse(""),
                heat.map(HeatSentences::level),
                heat.map(h -> new Water(h.amount(), h.outcome())),
                LargestLoss.of(result).brief(figures),
                Cautions.oneLine(
                        hottest,
                        Cautions.at(TargetWords.of(result.scenario().target()).noun())));
    }

    /** The same in all units, in little more time. */
    public static Map<UnitSystem, TraceSummary> inAllUnits(TraceResult result) {
        Map<UnitSystem, TraceSummary> all = new EnumMap<>(UnitSystem.class);
        double hottest = MaximumFlux.of(result);
        for (UnitSystem system : UnitSystem.values()) {
            all.put(system, of(result, hottest, system));
        }
        return all;
    }
}
