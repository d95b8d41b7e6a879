package simmerpoint.study.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.likely.LikelyMoments;
import simmerpoint.study.likely.TracedMoment;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * What is likely at the instants of days whose light is known for the figures as given.
 *
 * @param read the cooker
 * @param bits 2^bits cookers are drawn
 * @param options rays, seed and threads
 */
record LikelyDays(CheckedScenario read, int bits, TraceOptions options) {
    /** Suns that every cooker is traced under: low, high and between. */
    private static final int SUNS = 4;

    List<DayResult> of(List<DayResult> days, Progress progress) {
        List<DayHour> lit = days.stream()
                .flatMap(day -> day.curve().stream())
                .filter(hour -> hour.light().isPresent())
                .sorted(Comparator.comparingDouble(DayHour::elevationRadians))
                .toList();
        if (lit.isEmpty()) {
            return days;
        }
        long start = System.nanoTime();
        LikelyMoments moments = LikelyMoments.of(
                read, suns(lit).stream().map(LikelyDays::traced).toList(), bits, options, progress);
        double seconds = (System.nanoTime() - start) * 1e-9;
        return days.stream()
                .map(day -> day.withLikely(
                        hour -> hour.light().isPresent() ? hour.withLikely(moments.at(traced(hour))) : hour, seconds))
                .toList();
    }

    private static TracedMoment traced(DayHour hour) {
        return new TracedMoment(
                hour.moment(),
                hour.beam().likelyWattsPerSquareMetre(),
                hour.light().orElseThrow().asGiven().faces());
    }

    /** Evenly spread over the heights, and the scenario's own. */
    private List<DayHour> suns(List<DayHour> lit) {
        double lowest = lit.get(0).elevationRadians();
        double step = (lit.get(lit.size() - 1).elevationRadians() - lowest) / (SUNS - 1);
        List<DayHour> suns = new ArrayList<>();
        for (int k = 0; k < SUNS; k++) {
            double wanted = lowest + k * step;
            add(
                    suns,
                    lit.stream()
                            .min(Comparator.comparingDouble(hour -> Math.abs(hour.elevationRadians() - wanted)))
                            .orElseThrow());
        }
        lit.stream().filter(this::isOwn).findFirst().ifPresent(hour -> add(suns, hour));
        return suns;
    }

    private static void add(List<DayHour> suns, DayHour sun) {
        if (!suns.contains(sun)) {
            suns.add(sun);
        }
    }

    private boolean isOwn(DayHour hour) {
        return read.scenario().site().filter(SiteConditions::timed).stream()
                .anyMatch(outdoors -> outdoors.when().isEqual(hour.time()));
    }
}
