package simmerpoint.study.day;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** The 21st of every month by hours, each traced anew. */
public final class YearStudy {
    /** Rays at each hour where none are asked for: sure to about half a per cent, and twelve days in seconds. */
    public static final long DEFAULT_RAYS = 1L << 14;

    /** Day of the month that stands for it: near it lie solstices and equinoxes. */
    public static final int DAY_OF_MONTH = 21;

    private static final int MONTHS = 12;
    private static final DateTimeFormatter MONTH_AND_CLOCK = DateTimeFormatter.ofPattern("MMMM, HH:mm", Locale.ENGLISH);

    private YearStudy() {}

    /** 2^{@value} cookers: the ends of the hours in a day are good to some minutes. */
    private static final int COOKERS = 6;

    /**
     * The year for a scenario with a pan and a place, with what is likely over all doubts.
     *
     * @param read the cooker
     * @param year within the years of {@link simmerpoint.sun.SunMoment}
     * @param walks whether to find out how often to aim at each instant, which takes most of the time
     * @param options rays for each instant
     * @param progress is told month by month
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static YearResult run(
            CheckedScenario read, int year, boolean walks, TraceOptions options, Progress progress) {
        long start = System.nanoTime();
        Progress first = new PartialProgress(progress, 0, DayStudy.AS_GIVEN);
        List<DayResult> days = days(read.scenario(), year, walks, options, first);
        Progress rest = new PartialProgress(progress, DayStudy.AS_GIVEN, 1);
        List<DayResult> likely = new LikelyDays(read, COOKERS, options).of(days, rest);
        return new YearResult(read.scenario(), year, likely, (System.nanoTime() - start) * 1e-9);
    }

    /** The same for the figures exactly as given alone, and not how often to aim. */
    public static YearResult run(Scenario scenario, int year, TraceOptions options, Progress progress) {
        long start = System.nanoTime();
        List<DayResult> days = days(scenario, year, false, options, progress);
        return new YearResult(scenario, year, days, (System.nanoTime() - start) * 1e-9);
    }

    private static List<DayResult> days(
            Scenario scenario, int year, boolean walks, TraceOptions options, Progress progress) {
        List<DayPlan> plans = IntStream.rangeClosed(1, MONTHS)
                .mapToObj(month -> DayPlan.hourly(LocalDate.of(year, month, DAY_OF_MONTH)))
                .toList();
        return DayStudy.run(scenario, plans, walks, MONTH_AND_CLOCK, options, progress);
    }
}
