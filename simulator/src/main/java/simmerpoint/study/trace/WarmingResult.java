package simmerpoint.study.trace;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.balance.LightInterval;
import simmerpoint.scenario.Scenario;
import simmerpoint.uncertainty.LikelyRange;

/**
 * How the water warms if the light stays as it is.
 *
 * @param scenario what was traced
 * @param seed of the trace
 * @param boilingCelsius local boiling point
 * @param points in order of time, the first at the start
 */
public record WarmingResult(Scenario scenario, long seed, double boilingCelsius, List<Point> points) {
    private static final int STEPS = 60;
    private static final double MINUTE = 60;
    private static final double BEYOND = 1.1;
    private static final double LONGEST_SECONDS = 4 * 3600;

    /**
     * One time.
     *
     * @param seconds since the start
     * @param water its temperature, °C
     */
    public record Point(double seconds, LikelyRange water) {}

    /** Keeps a copy of the points. */
    public WarmingResult {
        points = List.copyOf(points);
    }

    /** Of a traced pan, at full minutes until the slow ones of such pans boil, at most four hours; empty for a bare disc. */
    public static Optional<WarmingResult> of(TraceResult result) {
        return result.heat().map(heat -> of(result, heat));
    }

    private static WarmingResult of(TraceResult result, HeatResult heat) {
        double step = MINUTE * Math.ceil(length(heat.boil()) / STEPS / MINUTE);
        List<Double> times =
                IntStream.rangeClosed(0, STEPS).mapToObj(k -> k * step).toList();
        List<LikelyRange> water =
                heat.cooking().cooking().temperatures(List.of(new LightInterval(STEPS * step, heat.absorbed())), times);
        return new WarmingResult(
                result.scenario(),
                result.seed(),
                heat.boilingCelsius(),
                IntStream.rangeClosed(0, STEPS)
                        .mapToObj(k -> new Point(times.get(k), water.get(k)))
                        .toList());
    }

    private static double length(BoilingOutcome outcome) {
        double boiled = outcome instanceof BoilingOutcome.Boils boils
                ? BEYOND * boils.seconds().high()
                : LONGEST_SECONDS;
        return Math.min(LONGEST_SECONDS, boiled);
    }

    /** When the water likely has a temperature, s; empty if it has not by the end. */
    public OptionalDouble likelySeconds(double celsius) {
        return crossing(celsius, LikelyRange::likely);
    }

    /** The same for the quick ones of such pans: one in ten is quicker. */
    public OptionalDouble soonestSeconds(double celsius) {
        return crossing(celsius, LikelyRange::high);
    }

    /** The same for the slow ones: one in ten is slower. */
    public OptionalDouble latestSeconds(double celsius) {
        return crossing(celsius, LikelyRange::low);
    }

    private OptionalDouble crossing(double celsius, ToDoubleFunction<LikelyRange> end) {
        for (int k = 1; k < points.size(); k++) {
            double before = end.applyAsDouble(points.get(k - 1).water());
            double now = end.applyAsDouble(points.get(k).water());
            if (before < celsius && now >= celsius) {
                double from = points.get(k - 1).seconds();
                double share = (celsius - before) / (now - before);
                return OptionalDouble.of(from + share * (points.get(k).seconds() - from));
            }
        }
        return OptionalDouble.empty();
    }
}
