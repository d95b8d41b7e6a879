package simmerpoint.study.day;

import java.util.List;
import java.util.Optional;
import simmerpoint.scenario.Scenario;
import simmerpoint.sun.SunDay;

/**
 * One day of a cooker under a clear sky.
 *
 * @param scenario the cooker and its place
 * @param plan what was asked
 * @param day sunrise, noon, sunset
 * @param hours the instants asked for, in order of time; none if the sun stays too low
 * @param noon solar noon; empty if the sun stays too low
 * @param curve the hours, and between them begin, noon and end of the time in which the sun is high enough
 * @param intervals when it simmers or better, for the likely beam and losses
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
        List<CookingInterval> intervals,
        long seed,
        long rays,
        int threads,
        double seconds) {
    /** Copies the lists. */
    public DayResult {
        hours = List.copyOf(hours);
        curve = List.copyOf(curve);
        intervals = List.copyOf(intervals);
    }

    /** The instants to show: those asked for, or the curve if there are none. */
    public List<DayHour> shown() {
        return hours.isEmpty() ? curve : hours;
    }

    /** Hours in which it simmers or better. */
    public double cookingHours() {
        return intervals.stream().mapToDouble(CookingInterval::hours).sum();
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
