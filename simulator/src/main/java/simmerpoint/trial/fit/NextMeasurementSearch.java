package simmerpoint.trial.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import simmerpoint.dish.built.Mask;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.study.likely.LitPan;
import simmerpoint.study.likely.LitPans;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.trial.fit.NextMeasurement.Kind;
import simmerpoint.trial.spot.CardLight;
import simmerpoint.trial.spot.CardReading;

/**
 * Looks for the measurement that tells the two likeliest flaws apart best: what each of them expects there is traced, and their difference
 * counted in standard deviations of what such a measurement tells.
 */
final class NextMeasurementSearch {
    /** What one further trial tells of heat taken up or lost, relative (our estimate of what a log gives). */
    private static final double TOLD = 0.05;

    /** So many standard deviations apart tell two flaws from each other. */
    private static final double ENOUGH = 1.5;

    private static final double WARM = 40;

    /** Widths of masks that leave about half of the mirror, in diameters. */
    private static final double RIM = 0.15;

    private static final double MIDDLE = 0.7;

    /** Distances of cards from the middle of the dish, in focal lengths. */
    private static final double[] CARDS = {0.92, 1, 1.08};

    private static final int CARD_RAYS = 4;

    private final CheckedScenario read;
    private final TraceOptions options;
    private final FlawLikelihood first;
    private final FlawLikelihood second;
    private final List<Candidate> all = new ArrayList<>();

    /**
     * One measurement.
     *
     * @param measurement what is expected
     * @param apart of the two flaws, in standard deviations
     */
    private record Candidate(NextMeasurement measurement, double apart) {
        /** Whether the water warms with either flaw: a measurement without that comes last. */
        boolean warms() {
            return measurement.firstExpects() > 0 && measurement.secondExpects() > 0;
        }
    }

    /**
     * What is measured with one flaw.
     *
     * @param value what is told, W or m
     * @param deviation of that
     */
    private record Expected(double value, double deviation) {}

    /** What a measurement changes of values that have a flaw. */
    private interface Change {
        ScenarioValues beside(ScenarioValues values, FlawStep flaw) throws ScenarioException;
    }

    private NextMeasurementSearch(
            CheckedScenario read, FlawLikelihood first, FlawLikelihood second, TraceOptions options) {
        this.read = read;
        this.first = first;
        this.second = second;
        this.options = options;
    }

    /** The best for two flaws; empty where none is good enough. */
    static Optional<NextMeasurement> of(
            FittedLog log, FlawLikelihood first, FlawLikelihood second, TraceOptions options) {
        NextMeasurementSearch search = new NextMeasurementSearch(log.scenario(), first, second, options);
        search.pans();
        search.masks();
        search.add(Kind.COOLING, 0, search::loss);
        search.cards();
        return search.all.stream()
                .filter(candidate -> candidate.apart() >= ENOUGH)
                .max(Comparator.comparing(Candidate::warms).thenComparingDouble(Candidate::apart))
                .map(Candidate::measurement);
    }

    /** The pan elsewhere, or another pan. */
    private void pans() {
        double pan = 2 * read.scenario().target().radiusMetres();
        double focal = read.scenario().dish().focalLengthMetres();
        for (double share : new double[] {0.08, 0.14}) {
            moved(Kind.PULL_BACK, share * focal, 1);
            moved(Kind.PUSH_IN, share * focal, -1);
        }
        sized(Kind.SMALLER_PAN, 0.67 * pan);
        sized(Kind.LARGER_PAN, 1.4 * pan);
    }

    private void moved(Kind kind, double by, double sign) {
        String key = "stand.pull-back";
        heated(kind, by, (values, step) -> {
            double from = step.numbers().getOrDefault(key, read.values().number(key));
            return values.withNumbers(Map.of(key, from + sign * by));
        });
    }

    private void sized(Kind kind, double size) {
        heated(kind, size, (values, step) -> values.withNumbers(Map.of("pan.diameter", size)));
    }

    /** About half of the mirror covered in every way, where the log had no mask. */
    private void masks() {
        double diameter = read.scenario().dish().diameterMetres();
        for (Kind kind : Kind.values()) {
            Mask.Part part = kind.covered();
            if (part != Mask.Part.NONE && !read.scenario().mask().isThere()) {
                double width = part.hasWidth() ? diameter * (part == Mask.Part.RIM ? RIM : MIDDLE) : 0;
                heated(kind, width, (values, step) -> covered(values, part, width));
            }
        }
    }

    private static ScenarioValues covered(ScenarioValues values, Mask.Part part, double width)
            throws ScenarioException {
        ScenarioValues masked = values.with(Map.of("dish.covered.part", part.word()));
        return part.hasWidth() ? masked.withNumbers(Map.of("dish.covered.width", width)) : masked;
    }

    /** A card at the focus and before and behind it. */
    private void cards() {
        double focal = read.scenario().dish().focalLengthMetres();
        double[] distances = Arrays.stream(CARDS).map(share -> share * focal).toArray();
        List<Expected> one = widths(first.middle(), distances);
        List<Expected> two = widths(second.middle(), distances);
        for (int k = 0; k < Math.min(one.size(), two.size()); k++) {
            add(Kind.CARD, distances[k], one.get(k), two.get(k));
        }
    }

    /** Widths at all distances; none if the dish cannot be such. */
    private List<Expected> widths(FlawStep flaw, double[] distances) {
        try {
            double[] widths = CardLight.widths(flaw.in(read), options.withRays(options.rays() / CARD_RAYS), distances);
            return IntStream.range(0, widths.length)
                    .mapToObj(k -> new Expected(
                            widths[k], new CardReading(0, distances[k], widths[k], Optional.empty()).deviation()))
                    .toList();
        } catch (ScenarioException e) {
            return List.of();
        }
    }

    private void heated(Kind kind, double size, Change change) {
        add(kind, size, flaw -> power(flaw, change));
    }

    private void add(Kind kind, double size, Function<FlawStep, Optional<Expected>> measured) {
        Optional<Expected> one = measured.apply(first.middle());
        Optional<Expected> two = measured.apply(second.middle());
        if (one.isPresent() && two.isPresent()) {
            add(kind, size, one.get(), two.get());
        }
    }

    private void add(Kind kind, double size, Expected one, Expected two) {
        double a = one.value();
        double b = two.value();
        double deviation = Math.max(one.deviation(), two.deviation());
        all.add(new Candidate(
                new NextMeasurement(kind, size, first.flaw(), a, second.flaw(), b), Math.abs(a - b) / deviation));
    }

    private Optional<Expected> power(FlawStep flaw, Change change) {
        try {
            Scenario scenario = CheckedScenario.scenario(change.beside(flaw.in(read), flaw));
            return LitPans.given(scenario, options).map(NextMeasurementSearch::power);
        } catch (ScenarioException e) {
            return Optional.empty();
        }
    }

    /** Cooking power is what is taken up less what is lost, and neither is known exactly. */
    private static Expected power(LitPan pan) {
        double taken = pan.absorbed().total();
        double watts = pan.kitchen().cooking().cookingPowerWatts(pan.absorbed(), pan.losses());
        return new Expected(watts, TOLD * Math.hypot(taken, taken - watts));
    }

    /** Loss in the shade, W at 40 K above the air: with it two flaws differ if one of them is a loss. */
    private Optional<Expected> loss(FlawStep flaw) {
        return FlawEffects.scenario(read, flaw)
                .flatMap(scenario -> LitPans.given(scenario, options))
                .map(NextMeasurementSearch::loss)
                .map(watts -> new Expected(watts, TOLD * watts));
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
