package simmerpoint.trial.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.likely.LitPan;
import simmerpoint.study.likely.LitPans;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.trial.fit.NextMeasurement.Kind;

/** Looks for the measurement that tells the two likeliest flaws apart best: what each of them expects there is traced. */
final class NextMeasurementSearch {
    /** What one further trial tells of the watts, relative (our estimate of what a log gives). */
    private static final double TOLD = 0.05;

    /** Expectations so many times that apart tell two flaws from each other. */
    private static final double ENOUGH = 1.5;

    private static final double WARM = 40;

    private final CheckedScenario read;
    private final TraceOptions options;

    private NextMeasurementSearch(CheckedScenario read, TraceOptions options) {
        this.read = read;
        this.options = options;
    }

    /** The best for two flaws; empty where none is good enough. */
    static Optional<NextMeasurement> of(
            FittedLog log, FlawLikelihood first, FlawLikelihood second, TraceOptions options) {
        NextMeasurementSearch search = new NextMeasurementSearch(log.scenario(), options);
        List<NextMeasurement> all = new ArrayList<>();
        double pan = 2 * log.scenario().scenario().target().radiusMetres();
        double focal = log.scenario().scenario().dish().focalLengthMetres();
        for (double share : new double[] {0.08, 0.14}) {
            search.moved(Kind.PULL_BACK, share * focal, first, second).ifPresent(all::add);
            search.moved(Kind.PUSH_IN, share * focal, first, second).ifPresent(all::add);
        }
        search.sized(Kind.SMALLER_PAN, 0.67 * pan, first, second).ifPresent(all::add);
        search.sized(Kind.LARGER_PAN, 1.4 * pan, first, second).ifPresent(all::add);
        search.cooling(first, second).ifPresent(all::add);
        return all.stream()
                .max(Comparator.comparingDouble(NextMeasurementSearch::apart))
                .filter(best -> apart(best) >= ENOUGH * TOLD);
    }

    /** How far apart two expectations are, as a share of the larger. */
    private static double apart(NextMeasurement m) {
        double larger = Math.max(Math.abs(m.firstExpects()), Math.abs(m.secondExpects()));
        return larger > 0 ? Math.abs(m.firstExpects() - m.secondExpects()) / larger : 0;
    }

    private Optional<NextMeasurement> moved(Kind kind, double by, FlawLikelihood first, FlawLikelihood second) {
        double sign = kind == Kind.PULL_BACK ? 1 : -1;
        return both(kind, by, first, second, step -> {
            double from =
                    step.numbers().getOrDefault("stand.pull-back", read.values().number("stand.pull-back"));
            return Map.of("stand.pull-back", from + sign * by);
        });
    }

    private Optional<NextMeasurement> sized(Kind kind, double size, FlawLikelihood first, FlawLikelihood second) {
        return both(kind, size, first, second, step -> Map.of("pan.diameter", size));
    }

    /** What a measurement changes beside a flaw. */
    private interface Change {
        Map<String, Double> beside(FlawStep flaw);
    }

    private Optional<NextMeasurement> both(
            Kind kind, double size, FlawLikelihood first, FlawLikelihood second, Change change) {
        Optional<Double> one = power(first.likeliest(), change);
        Optional<Double> two = power(second.likeliest(), change);
        return one.isPresent() && two.isPresent()
                ? Optional.of(new NextMeasurement(kind, size, first.flaw(), one.get(), second.flaw(), two.get()))
                : Optional.empty();
    }

    private Optional<Double> power(FlawStep flaw, Change change) {
        try {
            Scenario scenario = CheckedScenario.scenario(flaw.in(read).withNumbers(change.beside(flaw)));
            return LitPans.given(scenario, options)
                    .map(pan -> pan.kitchen().cooking().cookingPowerWatts(pan.absorbed(), pan.losses()));
        } catch (ScenarioException e) {
            return Optional.empty();
        }
    }

    /** Loss in the shade, W at 40 K above the air: with it two flaws differ if one of them is a loss. */
    private Optional<NextMeasurement> cooling(FlawLikelihood first, FlawLikelihood second) {
        Optional<Double> one = loss(first.likeliest());
        Optional<Double> two = loss(second.likeliest());
        return one.isPresent() && two.isPresent()
                ? Optional.of(new NextMeasurement(Kind.COOLING, 0, first.flaw(), one.get(), second.flaw(), two.get()))
                : Optional.empty();
    }

    private Optional<Double> loss(FlawStep flaw) {
        return FlawEffects.scenario(read, flaw)
                .flatMap(scenario -> LitPans.given(scenario, options))
                .map(NextMeasurementSearch::loss);
    }

    private static double loss(LitPan pan) {
        double celsius = Math.min(
                pan.kitchen().around().airCelsius() + WARM,
                pan.kitchen().around().boilingCelsius());
        return pan.kitchen()
                .cooking()
                .pot(pan.losses())
                .losses()
                .at(celsius, AbsorbedLight.NOTHING)
                .total();
    }
}
