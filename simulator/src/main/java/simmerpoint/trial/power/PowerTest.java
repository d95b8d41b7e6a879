package simmerpoint.trial.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.trial.log.Reading;
import simmerpoint.trial.log.TrialLog;

/**
 * The standard's cooking power from one or more heating logs of the same cooker: see {@link StandardCookingPower}.
 *
 * @param basis what powers are standardised by
 * @param intervals all intervals of ten minutes
 * @param used those the line goes through: all that keep the standard's limits, or all where fewer than three do
 * @param line standardised power against water − air; empty of fewer than three intervals
 * @param checks which of the standard's conditions were met
 */
public record PowerTest(
        Basis basis,
        List<TestInterval> intervals,
        List<TestInterval> used,
        Optional<StandardCookingPower.Line> line,
        List<TestCondition.Check> checks) {
    /** Share of all confidence intervals that hold the truth. */
    public static final double CONFIDENCE = 0.95;

    private static final int LEAST = 3;

    /** What powers are standardised by. */
    public enum Basis {
        /** All sunlight on a plane that faces the sun: the standard's own. */
        IRRADIANCE,
        /** The beam alone: the figure is none of the standard's. */
        BEAM,
        /** Nothing was measured: powers are as they were. */
        NOTHING
    }

    /** Keeps its own lists. */
    public PowerTest {
        intervals = List.copyOf(intervals);
        used = List.copyOf(used);
        checks = List.copyOf(checks);
    }

    /** Of heating logs with the same pan; at least one. */
    public static PowerTest of(List<TrialLog> logs, HeatedPan pan) {
        return of(logs, basis(logs), pan);
    }

    static PowerTest of(List<TrialLog> logs, Basis basis, HeatedPan pan) {
        List<TestInterval> all = new ArrayList<>();
        logs.forEach(log -> all.addAll(TestIntervals.of(log, pan, basis)));
        List<TestInterval> kept = all.stream().filter(TestInterval::isKept).toList();
        List<TestInterval> used = kept.size() < LEAST ? all : kept;
        Optional<StandardCookingPower.Line> line = line(used);
        return new PowerTest(basis, all, used, line, checks(logs, pan, used, line));
    }

    /** All logs by the least that any of them measured. */
    static Basis basis(List<TrialLog> logs) {
        if (logs.stream().allMatch(log -> log.has(Reading::irradiance))) {
            return Basis.IRRADIANCE;
        }
        return logs.stream().allMatch(log -> log.has(Reading::beam)) ? Basis.BEAM : Basis.NOTHING;
    }

    private static Optional<StandardCookingPower.Line> line(List<TestInterval> used) {
        List<StandardCookingPower.Interval> points =
                used.stream().map(TestInterval::interval).toList();
        long differ = points.stream()
                .mapToDouble(StandardCookingPower.Interval::difference)
                .distinct()
                .count();
        return points.size() >= LEAST && differ > 1 ? Optional.of(StandardCookingPower.line(points)) : Optional.empty();
    }

    private static List<TestCondition.Check> checks(
            List<TrialLog> logs, HeatedPan pan, List<TestInterval> used, Optional<StandardCookingPower.Line> line) {
        double load = pan.waterKilograms() / pan.apertureArea();
        double fit = line.map(StandardCookingPower.Line::determination).orElse(Double.NaN);
        return List.of(
                check(TestCondition.LOAD, DoubleStream.of(load)),
                check(TestCondition.WIND, used, TestInterval::windMetresPerSecond),
                check(TestCondition.AIR, air(logs)),
                check(
                        TestCondition.IRRADIANCE,
                        used,
                        i -> Double.isNaN(i.lightSpread())
                                ? Double.NaN
                                : i.interval().irradiance()),
                check(TestCondition.STEADY_LIGHT, used, TestInterval::lightSpread),
                check(
                        TestCondition.WATER,
                        used,
                        i -> Math.min(i.interval().startCelsius() - i.interval().airCelsius(), i.kelvinToBoiling())),
                check(
                        TestCondition.READINGS,
                        DoubleStream.of(logs.stream()
                                .mapToDouble(PowerTest::longestStep)
                                .max()
                                .orElse(0))),
                check(TestCondition.INTERVALS, DoubleStream.of(used.size())),
                check(TestCondition.DAYS, DoubleStream.of(logs.size())),
                check(TestCondition.DETERMINATION, DoubleStream.of(fit)));
    }

    private static DoubleStream air(List<TrialLog> logs) {
        return logs.stream().anyMatch(log -> !log.has(Reading::airCelsius))
                ? DoubleStream.of(Double.NaN)
                : logs.stream()
                        .flatMapToDouble(log -> log.readings().stream()
                                .filter(r -> r.has(Reading::airCelsius))
                                .mapToDouble(Reading::airCelsius));
    }

    private static double longestStep(TrialLog log) {
        List<Reading> water = log.water();
        double longest = 0;
        for (int k = 1; k < water.size(); k++) {
            longest =
                    Math.max(longest, water.get(k).seconds() - water.get(k - 1).seconds());
        }
        return longest / 60;
    }

    private static TestCondition.Check check(
            TestCondition condition, List<TestInterval> used, ToDoubleFunction<TestInterval> figure) {
        return check(condition, used.stream().mapToDouble(figure));
    }

    private static TestCondition.Check check(TestCondition condition, DoubleStream found) {
        double[] all = found.toArray();
        return all.length == 0
                ? new TestCondition.Check(condition, Double.NaN, Double.NaN)
                : new TestCondition.Check(
                        condition,
                        DoubleStream.of(all).min().getAsDouble(),
                        DoubleStream.of(all).max().getAsDouble());
    }
}
