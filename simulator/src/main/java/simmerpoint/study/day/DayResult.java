package simmerpoint.study.day;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import simmerpoint.scenario.Scenario;
import simmerpoint.sun.SunDay;
import simmerpoint.uncertainty.LikelyRange;

/**
 * One day of a cooker under a clear sky.
 *
 * @param scenario the cooker and its place
 * @param plan what was asked
 * @param day sunrise, noon, sunset
 * @param hours the instants asked for, in order of time; none if the sun stays too low
 * @param noon solar noon; empty if the sun stays too low
 * @param curve the hours, and between them begin, noon and end of the time in which the sun is high enough
 * @param seed of the traces: all instants share their samples
 * @param rays traced in all
 * @param threads used
 * @param seconds wall time
 */
public record DayResult(
        Scenario scenario,
        DayPlan plan,
        SunDay day,
        List<DayHour> hours,
        Optional<DayHour> noon,
        List<DayHour> curve,
        long seed,
        long rays,
        int threads,
        double seconds) {
    /** Copies the lists. */
    public DayResult {
        hours = List.copyOf(hours);
        curve = List.copyOf(curve);
    }

    /** The instants to show: those asked for, or the curve if there are none. */
    public List<DayHour> shown() {
        return hours.isEmpty() ? curve : hours;
    }

    /** When it simmers or better and the dish clears the ground: the likely end, or one end of its range. */
    public List<DayInterval> intervals(ToDoubleFunction<LikelyRange> end) {
        return DayIntervals.over(
                curve,
                List.of(hour -> hour.simmerSpareWatts(end), hour -> hour.stand().clearanceMetres()));
    }

    /** When the dish, aimed at the sun, touches the ground. */
    public List<DayInterval> touching() {
        return DayIntervals.over(curve, List.of(hour -> -hour.stand().clearanceMetres()));
    }

    /** Whether the ground alone keeps it from any simmer on this day. */
    public boolean isGrounded() {
        return intervals(LikelyRange::likely).isEmpty()
                && curve.stream().anyMatch(hour -> hour.simmerSpareWatts(LikelyRange::likely) >= 0);
    }

    /** Hours of {@link #intervals}, likely, and as one such cooker in ten does less and one more. */
    public LikelyRange cookingHours() {
        return new LikelyRange(hours(LikelyRange::low), hours(LikelyRange::likely), hours(LikelyRange::high));
    }

    private double hours(ToDoubleFunction<LikelyRange> end) {
        return intervals(end).stream().mapToDouble(DayInterval::hours).sum();
    }

    /** The same with what is likely at every instant. */
    DayResult withLikely(UnaryOperator<DayHour> likely, double moreSeconds) {
        List<DayHour> all = curve.stream().map(likely).toList();
        Set<ZonedDateTime> clock = hours.stream().map(DayHour::time).collect(Collectors.toSet());
        return new DayResult(
                scenario,
                plan,
                day,
                all.stream().filter(hour -> clock.contains(hour.time())).toList(),
                noon.flatMap(at -> all.stream()
                        .filter(hour -> hour.time().equals(at.time()))
                        .findFirst()),
                all,
                seed,
                rays,
                threads,
                seconds + moreSeconds);
    }

    /** The flux that cautions go by, W/m²: the largest of any hour. */
    public double cautionFlux() {
        return curve.stream()
                .flatMap(h -> h.light().stream())
                .mapToDouble(HourLight::cautionFlux)
                .max()
                .orElse(0);
    }

    /** Largest standard error of the watts taken up by the pan, as a share of them, over all instants with light. */
    public double worstRelativeError() {
        return curve.stream()
                .flatMap(h -> h.light().stream())
                .filter(l -> l.absorbed().value() > 0)
                .mapToDouble(l -> l.absorbed().relativeError())
                .max()
                .orElse(0);
    }
}
