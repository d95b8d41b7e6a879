package simmerpoint.study.day;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
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
        long start = System.nanoTime();
        HourStudy study = new HourStudy(scenario, options);
        SiteConditions outdoors = scenario.site().orElseThrow();
        SunDay day = SunDay.of(outdoors.place(), plan.date());
        Optional<SunWindow> window = SunWindow.of(day, plan.leastElevationRadians());
        List<ZonedDateTime> clock =
                window.map(w -> w.clockTimes(day, plan.step())).orElse(List.of());
        List<ZonedDateTime> all =
                window.map(w -> w.withEnds(clock, day.solarNoon())).orElse(List.of());
        List<DayHour> curve = new ArrayList<>();
        for (int k = 0; k < all.size(); k++) {
            curve.add(study.at(all.get(k), part(progress, k, all.size(), CLOCK.format(all.get(k)))));
        }
        return new DayResult(
                scenario,
                plan,
                day,
                curve.stream().filter(h -> clock.contains(h.time())).toList(),
                curve.stream().filter(h -> isNoon(h, day)).findFirst(),
                curve,
                options.seed(),
                study.rays(),
                options.threads(),
                (System.nanoTime() - start) * 1e-9);
    }

    private static boolean isNoon(DayHour hour, SunDay day) {
        return Math.abs(Duration.between(hour.time(), day.solarNoon()).toSeconds()) < SAME_SECONDS;
    }

    /** Progress of the k-th of n equal parts of the work. */
    static Progress part(Progress whole, int k, int n, String words) {
        return (done, detail) -> whole.report((k + done) / n, detail.isEmpty() ? words : words + ", " + detail);
    }
}
