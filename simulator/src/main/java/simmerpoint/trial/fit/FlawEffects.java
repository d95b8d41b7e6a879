package simmerpoint.trial.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.likely.LitPans;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.trial.fit.DrawnCurves.Outcome;
import simmerpoint.trial.fit.FlawStep.Way;
import simmerpoint.trial.log.Reading;

/**
 * What flaws of every size do to the curves of all logs: the cooker as given is traced without them and with them in a few sizes; between
 * these the change runs straight with the size.
 */
final class FlawEffects {
    /** Sizes that are traced, in standard deviations. */
    private static final double[] TRACED = {0, 0.4, 0.8, 1.2, 1.7, 2.3, 3};

    /** Sizes between two of them. */
    private static final int FINER = 5;

    private final List<FittedLog> logs;
    private final TraceOptions options;
    private final List<Outcome> without;

    /**
     * One size of one flaw.
     *
     * @param flaw which
     * @param step its size in the first log
     * @param weight how likely that size is where the flaw is there; those of one flaw add up to 1
     * @param more change of all points and, last, of the cooking power
     */
    record Effect(TrialFlaw flaw, FlawStep step, double weight, double[] more) {}

    private FlawEffects(List<FittedLog> logs, TraceOptions options) {
        this.logs = logs;
        this.options = options;
        without = logs.stream()
                .map(log -> outcome(log, log.scenario().scenario()).orElseThrow())
                .toList();
    }

    /** Of all flaws that can be there; sizes with which a pan cannot stand are left out. */
    static List<Effect> of(List<FittedLog> logs, TraceOptions options) {
        FlawEffects effects = new FlawEffects(logs, options);
        Scenario first = logs.get(0).scenario().scenario();
        return Arrays.stream(TrialFlaw.values())
                .filter(flaw -> flaw.isPossible(first))
                .flatMap(flaw -> flaw.isSwitch() ? effects.ofSwitch(flaw) : effects.ofSizes(flaw))
                .toList();
    }

    private Stream<Effect> ofSwitch(TrialFlaw flaw) {
        return more(flaw, Way.ONLY, 1)
                .map(more -> new Effect(flaw, flaw.step(logs.get(0).scenario(), Way.ONLY, 1), 1, more))
                .stream();
    }

    private Stream<Effect> ofSizes(TrialFlaw flaw) {
        double deviation = flaw.deviation(logs.get(0).log().has(Reading::wind));
        List<Effect> all =
                flaw.ways().stream().flatMap(way -> ofWay(flaw, way, deviation)).toList();
        double sum = all.stream().mapToDouble(Effect::weight).sum();
        return all.stream().map(e -> new Effect(e.flaw(), e.step(), e.weight() / sum, e.more()));
    }

    private Stream<Effect> ofWay(TrialFlaw flaw, Way way, double deviation) {
        List<Optional<double[]>> traced = IntStream.range(1, TRACED.length)
                .parallel()
                .mapToObj(k -> more(flaw, way, TRACED[k] * deviation))
                .toList();
        List<Effect> found = new ArrayList<>();
        double[] before = null;
        for (int k = 1; k < TRACED.length && traced.get(k - 1).isPresent(); k++) {
            double[] now = traced.get(k - 1).get();
            double width = (TRACED[k] - TRACED[k - 1]) / FINER;
            for (int f = 1; f <= FINER; f++) {
                double size = TRACED[k - 1] + f * width;
                found.add(new Effect(
                        flaw,
                        flaw.step(logs.get(0).scenario(), way, size * deviation),
                        width * Math.exp(-size * size / 2),
                        between(before, now, (double) f / FINER)));
            }
            before = now;
        }
        return found.stream();
    }

    private static double[] between(double[] before, double[] now, double share) {
        double[] more = new double[now.length];
        for (int k = 0; k < more.length; k++) {
            double from = before == null ? 0 : before[k];
            more[k] = from + share * (now[k] - from);
        }
        return more;
    }

    /** Change of everything by one size; empty where the pan of a log cannot stand so. */
    private Optional<double[]> more(TrialFlaw flaw, Way way, double size) {
        List<double[]> parts = new ArrayList<>();
        double watts = 0;
        for (int k = 0; k < logs.size(); k++) {
            FittedLog log = logs.get(k);
            Optional<Outcome> with = scenario(log.scenario(), flaw.step(log.scenario(), way, size))
                    .flatMap(scenario -> outcome(log, scenario));
            if (with.isEmpty()) {
                return Optional.empty();
            }
            double[] curve = with.get().celsius().clone();
            for (int p = 0; p < curve.length; p++) {
                curve[p] -= without.get(k).celsius()[p];
            }
            parts.add(curve);
            watts = k == 0 ? with.get().watts() - without.get(0).watts() : watts;
        }
        parts.add(new double[] {watts});
        return Optional.of(parts.stream().flatMapToDouble(Arrays::stream).toArray());
    }

    /** The scenario with a flaw; empty where its values do not go together. */
    static Optional<Scenario> scenario(CheckedScenario read, FlawStep step) {
        try {
            return Optional.of(CheckedScenario.scenario(step.in(read)));
        } catch (ScenarioException e) {
            return Optional.empty();
        }
    }

    private Optional<Outcome> outcome(FittedLog log, Scenario scenario) {
        return LitPans.given(scenario, options)
                .map(pan -> Outcome.of(pan, log.weather(), log.curve().seconds()));
    }
}
