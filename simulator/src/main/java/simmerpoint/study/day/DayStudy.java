package simmerpoint.study.day;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.sun.SunDay;

/**
 * A cooker over one day of clear sky: dish aimed at every instant as well as the scenario says, light traced anew on the
 * level pan at the sun's elevation. All instants share their samples, so that the day runs smoothly. Clouds, hills and
 * what the cook does in between are left out.
 */
public final class DayStudy {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final long SAME_SECONDS = 60;

    /** Share of the work that is done when the figures as given are known. */
    static final double AS_GIVEN = 0.7;

    private DayStudy() {}

    /**
     * The day of {@code plan} for a scenario with a pan and a place, with what is likely over all doubts.
     *
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static DayResult run(CheckedScenario read, DayPlan plan, TraceOptions options, Progress progress) {
        DayResult asGiven = run(read.scenario(), plan, options, new PartialProgress(progress, 0, AS_GIVEN));
        Progress rest = new PartialProgress(progress, AS_GIVEN, 1);
        return new LikelyDays(read, LikelyStudy.FOR_RANGE, options)
                .of(List.of(asGiven), rest)
                .get(0);
    }

    /** The same for the figures exactly as given alone. */
    public static DayResult run(Scenario scenario, DayPlan plan, TraceOptions options, Progress progress) {
        return run(scenario, List.of(plan), true, CLOCK, options, progress).get(0);
    }

    /**
     * Several days, all their instants worked on together.
     *
     * @param walks whether to find out how often to aim at each instant
     * @param words says which instant is worked on
     */
    static List<DayResult> run(
            Scenario scenario,
            List<DayPlan> plans,
            boolean walks,
            DateTimeFormatter words,
            TraceOptions options,
            Progress progress) {
        long start = System.nanoTime();
        List<Instants> days =
                plans.stream().map(plan -> Instants.of(scenario, plan)).toList();
        List<ZonedDateTime> all = days.stream().flatMap(day -> day.all.stream()).toList();
        List<HourStudy.Traced> traced =
                new HourStudy(scenario, walks, options).each(all, k -> words.format(all.get(k)), progress);
        double seconds = (System.nanoTime() - start) * 1e-9 / days.size();
        List<DayResult> out = new ArrayList<>();
        int first = 0;
        for (Instants day : days) {
            out.add(day.result(scenario, traced.subList(first, first + day.all.size()), options, seconds));
            first += day.all.size();
        }
        return out;
    }

    /** The instants of one day: those of the clock, and with noon and both ends. */
    private record Instants(DayPlan plan, SunDay day, List<ZonedDateTime> clock, List<ZonedDateTime> all) {
        static Instants of(Scenario scenario, DayPlan plan) {
            SunDay day = SunDay.of(scenario.site().orElseThrow().place(), plan.date());
            Optional<SunWindow> window = SunWindow.of(day, plan.leastElevationRadians());
            List<ZonedDateTime> clock =
                    window.map(w -> w.clockTimes(day, plan.step())).orElse(List.of());
            List<ZonedDateTime> all =
                    window.map(w -> w.withEnds(clock, day.solarNoon())).orElse(List.of());
            return new Instants(plan, day, clock, all);
        }

        DayResult result(Scenario scenario, List<HourStudy.Traced> traced, TraceOptions options, double seconds) {
            List<DayHour> curve = traced.stream().map(HourStudy.Traced::hour).toList();
            return new DayResult(
                    scenario,
                    plan,
                    day,
                    curve.stream().filter(h -> clock.contains(h.time())).toList(),
                    curve.stream().filter(h -> isNoon(h, day)).findFirst(),
                    curve,
                    options.seed(),
                    traced.stream().mapToLong(HourStudy.Traced::rays).sum(),
                    options.threads(),
                    seconds);
        }
    }

    private static boolean isNoon(DayHour hour, SunDay day) {
        return Math.abs(Duration.between(hour.time(), day.solarNoon()).toSeconds()) < SAME_SECONDS;
    }
}
