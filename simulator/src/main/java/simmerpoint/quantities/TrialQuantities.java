package simmerpoint.quantities;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.balance.ParaboloidProtocol;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.trial.BoilTrial;
import simmerpoint.trial.TrialNote;
import simmerpoint.trial.TrialResult;
import simmerpoint.trial.fit.FittedCurve;
import simmerpoint.trial.fit.FlawLikelihood;
import simmerpoint.trial.fit.FlawPair;
import simmerpoint.trial.fit.FlawStep;
import simmerpoint.trial.fit.NextMeasurement;
import simmerpoint.trial.fit.TrialFit;
import simmerpoint.trial.fit.TrialFlaw;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.trial.power.PowerTest;
import simmerpoint.trial.power.ProtocolTest;
import simmerpoint.trial.power.TestCondition;
import simmerpoint.trial.power.TestInterval;
import simmerpoint.uncertainty.LikelyRange;

/** What {@code trial} finds; its table has a row for every point of every log beside the model. */
public final class TrialQuantities {
    /** In place of a flaw where none is likelier than none. */
    private static final String NO_FLAW = "none";

    private static final List<String> FLAWS = Stream.concat(
                    Stream.of(NO_FLAW), Arrays.stream(TrialFlaw.values()).map(TrialFlaw::key))
            .toList();

    private static final Fields<TestInterval> INTERVAL = Fields.<TestInterval>none()
            .number("start_s", "since the first row of its log", TestInterval::startSeconds)
            .number("start_C", "water at its start", i -> i.interval().startCelsius())
            .number("end_C", "water at its end", i -> i.interval().endCelsius())
            .number("above_air_K", "mean of water less air", i -> i.interval().difference())
            .number(
                    "irradiance_W_m2",
                    "that powers are standardised by",
                    i -> i.interval().irradiance())
            .number("power_W", "heat into the water", i -> i.interval().watts())
            .number(
                    "standardised_power_W",
                    "the same at 700 W/m2",
                    i -> i.interval().standardisedWatts())
            .number("wind_m_s", "mean wind", TestInterval::windMetresPerSecond)
            .flag("kept", "whether light and water kept within the standard's limits", TestInterval::isKept);

    private static final Fields<TestCondition.Check> CONDITION = Fields.<TestCondition.Check>none()
            .word("condition", "what is asked", TestCondition.class, TestCondition.Check::condition)
            .word("verdict", "whether it was met", TestCondition.Verdict.class, TestCondition.Check::verdict)
            .number("found_low", "least that was found", TestCondition.Check::low)
            .number("found_high", "most that was found", TestCondition.Check::high);

    private static final Fields<PowerTest> POWER = Fields.<PowerTest>none()
            .word("basis", "light that powers are standardised by", PowerTest.Basis.class, PowerTest::basis)
            .rows("intervals", "of ten minutes", PowerTest::intervals, INTERVAL)
            .rows("conditions", "of the standard, from memory", PowerTest::checks, CONDITION);

    private static final Fields<ParaboloidProtocol> FACTORS = Fields.<ParaboloidProtocol>none()
            .number(
                    "optical_factor",
                    "share of the light through the aperture that heats",
                    ParaboloidProtocol::opticalFactor)
            .number("time_constant_s", "of pan and water", ParaboloidProtocol::timeConstantSeconds);

    private static final Fields<ProtocolTest> PROTOCOL = Fields.<ProtocolTest>none()
            .number("heat_loss_W_K", "loss of the pan per kelvin above the air", ProtocolTest::lossWattsPerKelvin)
            .number("heat_loss_low_W_K", "least of its 95 % interval", ProtocolTest::low)
            .number("heat_loss_high_W_K", "most of it", ProtocolTest::high)
            .flag("heat_loss_from_cooling", "whether a cooling log tells it", ProtocolTest::fromCooling)
            .includeOptional(ProtocolTest::factors, FACTORS);

    private static final Fields<FlawLikelihood> FLAW = Fields.<FlawLikelihood>none()
            .text("flaw", "which", FLAWS, f -> f.flaw().key())
            .number("probability", "that it alone is there", FlawLikelihood::probability)
            .word("way", "of its likeliest size", FlawStep.Way.class, FlawLikelihood::way)
            .number("size", "expected where it is there: rad, m, m/s or a share", FlawLikelihood::size);

    private static final Fields<FlawPair> PAIR = Fields.<FlawPair>none()
            .text("flaw", "one", FLAWS, p -> p.first().key())
            .text("other", "the other", FLAWS, p -> p.second().key())
            .number("probability", "that these two are there", FlawPair::probability);

    private static final Fields<NextMeasurement> NEXT = Fields.<NextMeasurement>none()
            .word("kind", "what to do", NextMeasurement.Kind.class, NextMeasurement::kind)
            .number("size_m", "how far, or how large; of a card its distance", NextMeasurement::size)
            .text("flaw", "one", FLAWS, n -> n.first().key())
            .optionalNumber("expects_W", "what it expects", n -> expects(n, false, n.firstExpects()))
            .optionalNumber(
                    "expects_width_m", "what it expects of a spot on a card", n -> expects(n, true, n.firstExpects()))
            .text("other", "the other", FLAWS, n -> n.second().key())
            .optionalNumber("other_expects_W", "what that expects", n -> expects(n, false, n.secondExpects()))
            .optionalNumber(
                    "other_expects_width_m",
                    "what that expects of a spot on a card",
                    n -> expects(n, true, n.secondExpects()));

    private static final Fields<TrialFit> FIT = Fields.<TrialFit>none()
            .range("expected_power_*_W", "cooking power before the trial, in its light", TrialFit::expected)
            .number("fitted_power_W", "the same by all that is known now", TrialFit::watts)
            .number("fitted_power_low_W", "least of its 95 % interval", TrialFit::lowWatts)
            .number("fitted_power_high_W", "most of it", TrialFit::highWatts)
            .text("likeliest_flaw", "or none", FLAWS, TrialQuantities::likeliest)
            .number("no_flaw_probability", "that nothing is wrong beyond the usual doubts", TrialFit::noFlaw)
            .rows("flaws", "each alone, the likeliest first", TrialFit::flaws, FLAW)
            .rows("pairs", "two together, the likeliest first", TrialFit::pairs, PAIR)
            .number("scatter", "of the logs beyond what instruments and gusts explain, 1 or more", TrialFit::scatter)
            .optionalGroup("next_measurement", "that tells the likeliest flaws apart", TrialFit::next, NEXT);

    private static final Fields<TrialNote> NOTE = Fields.<TrialNote>none()
            .text("file", "of the log", n -> name(n.log()))
            .word("note", "what to know about it", TrialNote.Kind.class, TrialNote::kind);

    private static final Fields<BoilTrial> BOIL = Fields.<BoilTrial>none()
            .optionalNumber("measured_boil_s", "from the first row", BoilTrial::measuredSeconds)
            .number("warmest_C", "warmest water", BoilTrial::warmestCelsius)
            .optionalNumber("expected_boil_low_s", "one such cooker in ten is quicker", b -> boil(b, LikelyRange::low))
            .optionalNumber("expected_boil_likely_s", "the middle of them", b -> boil(b, LikelyRange::likely))
            .optionalNumber("expected_boil_high_s", "one in ten is slower", b -> boil(b, LikelyRange::high));

    private static final Fields<TrialResult> ALL = Fields.<TrialResult>none()
            .optionalNumber(
                    "standard_cooking_power_W",
                    "at 50 K above the air and 700 W/m2 on a plane that faces the sun; only where that was measured",
                    line(PowerTest.Basis.IRRADIANCE, 0))
            .optionalNumber(
                    "standard_cooking_power_low_W", "least of its 95 % interval", line(PowerTest.Basis.IRRADIANCE, -1))
            .optionalNumber("standard_cooking_power_high_W", "most of it", line(PowerTest.Basis.IRRADIANCE, 1))
            .optionalNumber(
                    "beam_cooking_power_W",
                    "the same at 700 W/m2 of beam, where that alone was measured",
                    line(PowerTest.Basis.BEAM, 0))
            .optionalNumber("beam_cooking_power_low_W", "least of its 95 % interval", line(PowerTest.Basis.BEAM, -1))
            .optionalNumber("beam_cooking_power_high_W", "most of it", line(PowerTest.Basis.BEAM, 1))
            .optionalNumber(
                    "plain_cooking_power_W",
                    "at 50 K above the air in the light as it was, where that was not measured",
                    line(PowerTest.Basis.NOTHING, 0))
            .optionalNumber(
                    "plain_cooking_power_low_W", "least of its 95 % interval", line(PowerTest.Basis.NOTHING, -1))
            .optionalNumber("plain_cooking_power_high_W", "most of it", line(PowerTest.Basis.NOTHING, 1))
            .includeOptional(TrialResult::protocol, PROTOCOL)
            .includeOptional(TrialResult::boil, BOIL)
            .includeOptional(TrialResult::fit, FIT)
            .optionalGroup("power_test", "the standard's test", TrialResult::power, POWER)
            .rows("notes", "on the logs", TrialResult::notes, NOTE);

    /** A point of a log. */
    private record Point(FittedCurve curve, int k) {
        double of(Function<FittedCurve, double[]> figure) {
            return figure.apply(curve)[k];
        }
    }

    private static final Fields<Point> POINT = Fields.<Point>none()
            .text("log", "its file", p -> name(p.curve().log()))
            .number("time_s", "since its first row", p -> p.of(FittedCurve::seconds))
            .number("measured_C", "water, mean of neighbouring readings", p -> p.of(FittedCurve::measured))
            .number("expected_low_C", "one drawn cooker in ten is cooler", p -> p.of(FittedCurve::low))
            .number("expected_C", "the middle of the drawn cookers", p -> p.of(FittedCurve::likely))
            .number("expected_high_C", "one in ten is warmer", p -> p.of(FittedCurve::high))
            .number("fitted_C", "by all that is known now", p -> p.of(FittedCurve::fitted));

    /** JSON and CSV of {@code trial}. */
    public static final Document<TrialResult> DOCUMENT = new Document<>(
            "trial",
            result -> result.scenario().scenario().title(),
            TrialResult::seed,
            ALL,
            new Table<>(POINT, TrialQuantities::points));

    private TrialQuantities() {}

    private static String name(TrialLog log) {
        return log.file().getFileName().toString();
    }

    private static String likeliest(TrialFit fit) {
        return fit.likeliest().map(f -> f.flaw().key()).orElse(NO_FLAW);
    }

    /** The single figure less or more half its 95 % interval. */
    private static Function<TrialResult, OptionalDouble> line(PowerTest.Basis basis, int sign) {
        return result -> result.line(basis).stream()
                .mapToDouble(line -> figure(line, sign))
                .findFirst();
    }

    private static double figure(StandardCookingPower.Line line, int sign) {
        return line.standardPowerWatts() + (sign == 0 ? 0 : sign * line.halfWidthWatts(PowerTest.CONFIDENCE));
    }

    private static OptionalDouble boil(BoilTrial trial, ToDoubleFunction<LikelyRange> end) {
        Optional<BoilingOutcome> expected = trial.expected().boil();
        return expected.filter(BoilingOutcome.Boils.class::isInstance).stream()
                .mapToDouble(boils -> end.applyAsDouble(((BoilingOutcome.Boils) boils).seconds()))
                .findFirst();
    }

    private static Stream<Point> points(TrialResult result) {
        return result.fit().stream()
                .flatMap(fit -> fit.curves().stream())
                .flatMap(curve -> IntStream.range(0, curve.seconds().length).mapToObj(k -> new Point(curve, k)));
    }

    private static OptionalDouble expects(NextMeasurement next, boolean width, double figure) {
        return next.isWidth() == width ? OptionalDouble.of(figure) : OptionalDouble.empty();
    }
}
